// Charts with the same x axis form a group: one range, one zoom, one hairline cursor. The cursor follows the pointer and
// the keyboard (arrows by point, Shift with arrows by decade, Page Up and Down by mark, Home, End; + - 0 zoom).
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { curve, style, units } = Stillrail;

  const groups = new Map();

  class Group {
    constructor(name) {
      this.name = name;
      this.views = new Set();
      this.at = null;
      this.zoomed = null;
      this.range = null;
    }

    get log() {
      return this.first.data.x.scale === 'log';
    }

    get first() {
      return this.views.values().next().value;
    }

    get shown() {
      return this.zoomed || this.range;
    }

    // The union of what the group's charts hold, so that they stay aligned; true when it changed.
    measure() {
      let low = Infinity;
      let high = -Infinity;
      for (const view of this.views) {
        const { x } = view.data;
        for (const shown of view.shown) {
          if (shown.points.length > 0 && shown.series.role !== 'limit') {
            low = Math.min(low, x.min ?? shown.points[0].x);
            high = Math.max(high, x.max ?? shown.points[shown.points.length - 1].x);
          }
        }
        low = Math.min(low, x.min ?? Infinity);
        high = Math.max(high, x.max ?? -Infinity);
      }
      if (!(high > low)) {
        [low, high] = this.log ? [1, 1e6] : [0, 1];
      }
      const changed = !this.range || this.range[0] !== low || this.range[1] !== high;
      this.range = [low, high];
      if (this.zoomed && (this.zoomed[0] >= high || this.zoomed[1] <= low)) {
        this.zoomed = null;
      }
      if (this.at === null) {
        const marks = [...this.views].flatMap((view) => view.data.marks || []);
        this.at = marks.length > 0 ? marks[0].at : null;
      }
      if (this.at !== null) {
        this.at = Math.min(high, Math.max(low, this.at));
      }
      return changed;
    }

    zoom(range) {
      if (range) {
        const low = Math.max(this.range[0], Math.min(...range));
        const high = Math.min(this.range[1], Math.max(...range));
        const whole = low <= this.range[0] && high >= this.range[1];
        const tooNarrow = this.log ? high / low < 1.02 : high - low < (this.range[1] - this.range[0]) / 1e4;
        if (tooNarrow) {
          return;
        }
        this.zoomed = whole ? null : [low, high];
      } else {
        this.zoomed = null;
      }
      for (const view of this.views) {
        view.rescale();
      }
      Stillrail.charts.announce('stillrail:layout', { group: this.name });
      this.draw();
    }

    zoomBy(factor) {
      const [low, high] = this.shown;
      const centre = this.at ?? (this.log ? Math.sqrt(low * high) : (low + high) / 2);
      const edge = (end) => this.log ? centre * (end / centre) ** factor : centre + (end - centre) * factor;
      this.zoom([edge(low), edge(high)]);
    }

    moveTo(x) {
      const [low, high] = this.shown;
      this.at = Math.min(high, Math.max(low, x));
      this.draw();
    }

    draw() {
      for (const view of this.views) {
        drawHairline(view, this);
      }
      Stillrail.charts.announce('stillrail:cursor', { group: this.name, at: this.at });
    }
  }

  function groupOf(name) {
    if (!groups.has(name)) {
      groups.set(name, new Group(name));
    }
    return groups.get(name);
  }

  function drawHairline(view, group) {
    const layer = view.hairline;
    layer.replaceChildren();
    const { chart, slider } = view;
    const { x, y } = chart.scales;
    const area = chart.chartArea;
    const at = group.at;
    const [low, high] = group.shown;
    slider.setAttribute('aria-valuemin', String(low));
    slider.setAttribute('aria-valuemax', String(high));
    slider.setAttribute('aria-valuenow', String(at ?? low));
    slider.setAttribute('aria-valuetext', spoken(view, at));
    if (at === null || at < low || at > high) {
      return;
    }
    const px = x.getPixelForValue(at);
    layer.append(style.svg('line', { class: 'chart-hair', x1: px, x2: px, y1: area.top, y2: area.bottom }));
    for (const shown of view.shown) {
      const value = shown.hidden ? null : view.valueAt(shown, at);
      const py = value === null ? NaN : y.getPixelForValue(value);
      if (py >= area.top && py <= area.bottom) {
        layer.append(style.svg('circle', { cx: px, cy: py, r: 3.2, fill: '#ffffff', stroke: style.colour(shown.series), 'stroke-width': 1.8 }));
      }
    }
    const text = units.format(at, view.data.x.unit, 4);
    const width = text.length * 6.6 + 10;
    const left = Math.max(area.left, Math.min(px - width / 2, area.right - width));
    layer.append(style.svg('rect', { class: 'chart-hair-plate', x: left, y: area.bottom + 5, width, height: 16, rx: 2 }));
    layer.append(style.svg('text', { class: 'chart-hair-text', x: left + width / 2, y: area.bottom + 17, 'text-anchor': 'middle' }, text));
  }

  function spoken(view, at) {
    if (at === null) {
      return 'not set';
    }
    const values = view.shown.filter((shown) => !shown.hidden)
      .map((shown) => `${shown.series.label} ${units.format(view.rawAt(shown, at), view.data.y.unit, 3)}`);
    return `${units.format(at, view.data.x.unit, 3)}: ${values.join(', ')}`;
  }

  function onKey(view, event) {
    const { group } = view;
    const list = view.mainPoints();
    if (event.ctrlKey || event.metaKey || event.altKey || list.length === 0) {
      return;
    }
    const [low, high] = group.shown;
    const at = group.at ?? low;
    const step = (by) => {
      if (event.shiftKey) {
        return group.log ? at * 10 ** by : at + by * (high - low) / 10;
      }
      const i = curve.before(list, at * (1 + 1e-12));
      const here = i >= 0 && list[i].x === at;
      const next = by > 0 ? i + 1 : here ? i - 1 : i;
      return list[Math.max(0, Math.min(list.length - 1, next))].x;
    };
    const marks = view.marksInOrder();
    const actions = {
      ArrowRight: () => group.moveTo(step(1)),
      ArrowUp: () => group.moveTo(step(1)),
      ArrowLeft: () => group.moveTo(step(-1)),
      ArrowDown: () => group.moveTo(step(-1)),
      Home: () => group.moveTo(low),
      End: () => group.moveTo(high),
      PageDown: () => group.moveTo(marks.find((mark) => mark > at * (1 + 1e-9)) ?? at),
      PageUp: () => group.moveTo(marks.filter((mark) => mark < at * (1 - 1e-9)).pop() ?? at),
      '+': () => group.zoomBy(0.5),
      '=': () => group.zoomBy(0.5),
      '-': () => group.zoomBy(2),
      0: () => group.zoom(null),
    };
    if (actions[event.key]) {
      event.preventDefault();
      actions[event.key]();
    }
  }

  function listen(view) {
    const { slider } = view;
    const pixel = (event) => event.clientX - slider.getBoundingClientRect().left + view.chart.chartArea.left;
    const value = (px) => view.chart.scales.x.getValueForPixel(px);
    const clamp = (px) => Math.max(view.chart.chartArea.left, Math.min(view.chart.chartArea.right, px));
    let start = null;
    let frame = 0;

    const follow = (px) => {
      const list = view.mainPoints();
      const x = value(clamp(px));
      view.group.moveTo(list.length > 0 ? list[curve.nearest(list, x, view.group.log)].x : x);
    };
    slider.addEventListener('pointermove', (event) => {
      const px = pixel(event);
      if (start !== null && Math.abs(px - start) > 5) {
        const area = view.chart.chartArea;
        const [left, right] = [clamp(start), clamp(px)].sort((a, b) => a - b);
        view.selection.replaceChildren(style.svg('rect', {
          class: 'chart-selection', x: left, y: area.top, width: right - left, height: area.bottom - area.top,
        }));
      }
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => follow(px));
    });
    slider.addEventListener('pointerdown', (event) => {
      if (event.button === 0 && event.pointerType === 'mouse') {
        start = pixel(event);
        slider.setPointerCapture(event.pointerId);
      } else {
        follow(pixel(event));
      }
    });
    slider.addEventListener('pointerup', (event) => {
      const from = start;
      start = null;
      view.selection.replaceChildren();
      if (from !== null && Math.abs(pixel(event) - from) > 5) {
        view.group.zoom([value(clamp(from)), value(clamp(pixel(event)))]);
      }
    });
    slider.addEventListener('pointercancel', () => {
      start = null;
      view.selection.replaceChildren();
    });
    slider.addEventListener('dblclick', () => view.group.zoom(null));
    slider.addEventListener('keydown', (event) => onKey(view, event));
  }

  Stillrail.cursor = { groupOf, groups, listen, drawHairline };
})();
