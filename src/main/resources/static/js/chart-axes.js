// The ruled paper of a chart: scales for Chart.js with our own ticks, and a frame of fixed margins, so that charts
// one below another (and the ribbon above them) share their frequency axis to the pixel.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { units } = Stillrail;

  const LEFT = 70;
  const FOOT = 44;
  const RULE = '#c3c2b8';
  const FAINT_RULE = '#e7e5dc';
  const ZERO = '#6f777d';
  const TEXT = '#3f474e';

  const labelRoom = (width) => width < 560 ? 108 : 158;

  function title(axis, shown) {
    return shown ? `${axis.label} (${shown})` : axis.label;
  }

  function scale(id, axis, font) {
    const log = axis.scale === 'log';
    const horizontal = id === 'x';
    let common = { factor: 1, unit: axis.unit };
    return {
      type: log ? 'logarithmic' : 'linear',
      position: horizontal ? 'bottom' : 'left',
      min: axis.low,
      max: axis.high,
      border: { color: '#8b8f93' },
      grid: {
        color: (context) => !context.tick || !context.tick.major ? FAINT_RULE : context.tick.value === 0 && !horizontal ? ZERO : RULE,
        lineWidth: 1,
        drawTicks: true,
        tickLength: 4,
      },
      title: { display: true, text: title(axis, axis.unit), color: TEXT, font: { ...font, size: 12 }, padding: { top: 2, bottom: 0 } },
      ticks: {
        autoSkip: false, maxRotation: 0, color: TEXT, font, padding: 3,
        callback: (value, index, ticks) => {
          if (!ticks[index].labelled) {
            return '';
          }
          if (log && common.factor === 1) {
            return units.format(value, axis.unit, 3, true);
          }
          return units.format(value / common.factor, '', 4, true);
        },
      },
      beforeBuildTicks: (self) => {
        common = log ? { factor: 1, unit: axis.unit } : units.commonPrefix(self.min, self.max, axis.unit);
        self.options.title.text = log ? axis.label : title(axis, common.unit);
      },
      afterBuildTicks: (self) => {
        const chart = self.chart;
        const length = horizontal ? chart.width - LEFT - labelRoom(chart.width) : chart.height - FOOT - 30;
        self.ticks = log ? units.logTicks(self.min, self.max, horizontal ? length * 0.62 : length * 1.7)
          : units.linearTicks(self.min, self.max, Math.max(3, Math.round(length / (horizontal ? 90 : 42))), axis.step);
      },
      afterFit: (self) => {
        if (horizontal) {
          self.height = FOOT;
          self.paddingLeft = 0;
          self.paddingRight = 0;
        } else {
          self.width = LEFT;
          self.paddingTop = 0;
          self.paddingBottom = 0;
        }
      },
    };
  }

  Stillrail.axes = { LEFT, FOOT, labelRoom, scale };
})();
