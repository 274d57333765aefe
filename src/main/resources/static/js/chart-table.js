// The cursor's table: one row a curve, one column a chart, each value where the hairline stands.
//   <table class="cursor-table" data-cursor-for="impedance esr share">
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { curve, style, units } = Stillrail;

  function cell(name, text, attributes = {}) {
    const element = document.createElement(name);
    element.textContent = text;
    for (const [attribute, value] of Object.entries(attributes)) {
      element.setAttribute(attribute, value);
    }
    return element;
  }

  function rowsOf(views) {
    const rows = new Map();
    for (const view of views) {
      for (const shown of view.shown) {
        if (!rows.has(shown.series.key)) {
          rows.set(shown.series.key, shown.series);
        }
      }
    }
    return [...rows.values()];
  }

  // Cells are made once for a set of curves; a moving cursor only changes their text.
  function build(table, views, signature) {
    table.replaceChildren();
    const caption = table.createCaption();
    caption.append('At ', cell('b', '', { class: 'cursor-at' }));
    const head = table.createTHead().insertRow();
    head.append(cell('th', 'Curve', { scope: 'col' }));
    for (const view of views) {
      head.append(cell('th', view.data.y.label, { scope: 'col', class: 'figure' }));
    }
    const body = table.createTBody();
    for (const series of rowsOf(views)) {
      const row = body.insertRow();
      row.dataset.key = series.key;
      const name = cell('th', '', { scope: 'row' });
      name.append(style.sample(series), ' ' + series.label);
      row.append(name);
      for (const view of views) {
        row.append(cell('td', '–', { class: 'figure', 'data-chart': view.id }));
      }
    }
    table.dataset.signature = signature;
  }

  function refresh(table) {
    const views = (table.dataset.cursorFor || '').split(/\s+/).map((id) => Stillrail.charts.view(id)).filter(Boolean);
    if (views.length === 0) {
      return;
    }
    const signature = JSON.stringify(views.map((view) => [view.id, view.data.y.label,
      view.shown.map(({ series }) => [series.key, series.label, style.colour(series), series.kind, series.technology])]));
    if (table.dataset.signature !== signature || table.rows.length === 0) {
      build(table, views, signature);
    }
    const { at } = views[0].group;
    const place = table.querySelector('.cursor-at');
    place.textContent = at === null ? '– (point at a chart, or focus it and use the arrow keys)' : units.format(at, views[0].data.x.unit, 4);
    for (const row of table.tBodies[0].rows) {
      views.forEach((view, index) => {
        const shown = view.shown.find(({ series }) => series.key === row.dataset.key);
        const value = shown && at !== null ? view.rawAt(shown, at) : null;
        const target = row.cells[index + 1];
        target.textContent = shown ? units.format(value, view.data.y.unit, 4) : '';
        const beyond = value !== null && value !== undefined && !curve.isCovered(shown.series, at);
        target.classList.toggle('extrapolated', beyond);
        if (beyond) {
          target.append(' ', cell('small', 'extrapolated'));
        }
      });
    }
  }

  function refreshAll() {
    document.querySelectorAll('table[data-cursor-for]').forEach(refresh);
  }

  document.addEventListener('stillrail:cursor', refreshAll);
  Stillrail.cursorTable = { refreshAll };
})();
