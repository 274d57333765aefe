// Names at the ends of the lines instead of a legend: each stands beside its curve, with a piece of the line, and is a
// button that hides or shows it. Where names would overlap they make room and a thin leader joins name and line.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { axes, style } = Stillrail;

  // Each name is 24 px high, enough for a finger; so they may touch.
  const GAP = 0;

  function build(view) {
    view.labels.replaceChildren();
    for (const shown of view.shown) {
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'chart-label' + (shown.series.role === 'bank' ? ' chart-label-bank' : '');
      button.setAttribute('aria-pressed', String(!shown.hidden));
      button.title = (shown.series.title || shown.series.label) + ' – hide or show';
      const text = document.createElement('span');
      text.textContent = shown.series.label;
      button.append(style.sample(shown.series, 26), text);
      button.addEventListener('click', () => view.toggle(shown.series.key));
      view.labels.append(button);
      shown.label = button;
    }
  }

  // Where the line leaves the plot, or the last place at which it can be seen.
  function endOf(view, shown) {
    const { x, y } = view.chart.scales;
    for (let i = shown.points.length - 1; i >= 0; i--) {
      const point = shown.points[i];
      if (point.x <= x.max && Number.isFinite(point.y)) {
        const inside = point.x === shown.points[shown.points.length - 1].x ? point.y : view.valueAt(shown, x.max) ?? point.y;
        return { px: Math.min(x.getPixelForValue(point.x), view.chart.chartArea.right), py: y.getPixelForValue(inside) };
      }
    }
    return null;
  }

  // Pushes neighbours apart, first down, then back up from the floor.
  function spread(places, top, bottom) {
    places.sort((a, b) => a.wanted - b.wanted);
    let floor = top;
    for (const place of places) {
      place.top = Math.max(floor, Math.min(place.wanted, bottom - place.height));
      floor = place.top + place.height + GAP;
    }
    let ceiling = bottom;
    for (const place of [...places].reverse()) {
      place.top = Math.max(top, Math.min(place.top, ceiling - place.height));
      ceiling = place.top - GAP;
    }
  }

  function place(view) {
    const { chart } = view;
    const area = chart.chartArea;
    view.labels.style.left = `${area.right + 16}px`;
    view.labels.style.width = `${axes.labelRoom(chart.width) - 18}px`;
    view.leaders.replaceChildren();
    const places = view.shown.map((shown) => {
      const end = shown.hidden ? null : endOf(view, shown);
      const height = shown.label.offsetHeight;
      const py = end ? Math.max(area.top, Math.min(area.bottom, end.py)) : area.bottom;
      return { shown, end, height, py, wanted: py - height / 2 };
    });
    spread(places, Math.max(0, area.top - 12), chart.height);
    for (const { shown, end, height, top, py } of places) {
      shown.label.style.top = `${top}px`;
      shown.label.classList.toggle('chart-label-off', shown.hidden);
      shown.label.classList.toggle('chart-label-faint', shown.faint);
      if (end) {
        const middle = top + height / 2;
        view.leaders.append(style.svg('path', {
          class: 'chart-leader', d: `M${area.right + 1} ${py}h2L${area.right + 12} ${middle}h4`,
        }));
        // A curve that ends inside the plot is joined by dots, which nobody takes for a curve.
        if (end.px < area.right - 4) {
          view.leaders.append(style.svg('path', { class: 'chart-leader chart-leader-inside', d: `M${end.px + 4} ${py}H${area.right}` }));
        }
      }
    }
  }

  Stillrail.labels = { build, place };
})();
