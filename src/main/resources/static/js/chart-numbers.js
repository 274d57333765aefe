// Every chart's numbers: a thinned table that keeps ends, marks and extremes, and all points as CSV.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { curve, units } = Stillrail;

  const ROWS = 60;

  const ASCII = { 'Ω': 'ohm', '°': 'deg', '°C': 'degC', 'µ': 'u' };

  // A spreadsheet takes a leading = + - @ for a formula, and names are typed by people.
  function quoted(text) {
    // A spreadsheet takes such a cell for a formula; some split at semicolons and tabs too.
    const safe = text.replace(/(^|[;\t\r\n])(?=[=+\-@])/g, "$1'");
    return /[",\r\n]/.test(safe) ? '"' + safe.replaceAll('"', '""') + '"' : safe;
  }

  const headed = (label, unit) => unit && unit !== '1' ? `${label} (${ASCII[unit] || unit})` : label;

  function csv(view) {
    const { data, shown } = view;
    const columns = [];
    for (const one of shown) {
      const { series } = one;
      const map = (values) => occurrences(series.x || data.xs || [], values);
      columns.push({ head: headed(`${series.label}: ${data.y.label}`, data.y.unit), at: map(series.y || []) });
      if (series.low && series.high) {
        columns.push({ head: headed(`${series.label}: ${data.y.label}, low`, data.y.unit), at: map(series.low) });
        columns.push({ head: headed(`${series.label}: ${data.y.label}, high`, data.y.unit), at: map(series.high) });
      }
    }
    const places = new Map();
    for (const column of columns) {
      for (const [x, values] of column.at) {
        places.set(x, Math.max(places.get(x) || 0, values.length));
      }
    }
    const lines = [[headed(data.x.label, data.x.unit), ...columns.map((column) => column.head)].map(quoted).join(',')];
    for (const x of [...places.keys()].sort((a, b) => a - b)) {
      for (let turn = 0; turn < places.get(x); turn++) {
        lines.push([x, ...columns.map((column) => (column.at.get(x) || [])[turn] ?? '')].join(','));
      }
    }
    return lines.join('\r\n') + '\r\n';
  }

  // A waveform with a jump has two values at one instant: both are kept.
  function occurrences(xs, values) {
    const result = new Map();
    for (let i = 0; i < Math.min(xs.length, values.length); i++) {
      if (!result.has(xs[i])) {
        result.set(xs[i], []);
      }
      result.get(xs[i]).push(values[i]);
    }
    return result;
  }

  function download(view) {
    const link = document.createElement('a');
    const address = URL.createObjectURL(new Blob([csv(view)], { type: 'text/csv;charset=utf-8' }));
    link.href = address;
    link.download = `${view.data.file || view.id}.csv`;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), 1000);
  }

  function extremes(list) {
    let low = null;
    let high = null;
    list.forEach((point) => {
      if (point.raw !== null) {
        low = low === null || point.raw < low.raw ? point : low;
        high = high === null || point.raw > high.raw ? point : high;
      }
    });
    return [low, high].filter(Boolean).map((point) => point.x);
  }

  // Places of the rows, each with what makes it worth a row.
  function places(view) {
    const list = view.mainPoints();
    const notes = new Map();
    const add = (x, note) => notes.set(x, [...(notes.get(x) || []), ...(note ? [note] : [])]);
    const step = Math.max(1, (list.length - 1) / (ROWS - 1));
    for (let i = 0; i < ROWS && Math.round(i * step) < list.length; i++) {
      add(list[Math.round(i * step)].x);
    }
    for (const mark of view.data.marks || []) {
      add(mark.at, mark.label);
    }
    for (const point of view.data.points || []) {
      add(point.x, point.label);
    }
    for (const { series, points } of view.shown) {
      if (series.role !== 'limit') {
        const [low, high] = extremes(points);
        if (low !== undefined) {
          add(low, `${series.label} lowest`);
        }
        if (high !== undefined && high !== low) {
          add(high, `${series.label} highest`);
        }
      }
    }
    return [...notes].sort((a, b) => a[0] - b[0]);
  }

  function cell(row, name, text, scope) {
    const element = document.createElement(name);
    element.textContent = text;
    if (scope) {
      element.scope = scope;
    }
    if (name === 'td') {
      element.className = 'figure';
    }
    row.append(element);
    return element;
  }

  function fill(view) {
    const { data, shown, numbers } = view;
    const table = document.createElement('table');
    const caption = table.createCaption();
    const head = table.createTHead().insertRow();
    cell(head, 'th', data.x.label, 'col');
    shown.forEach(({ series }) => cell(head, 'th', series.label, 'col').className = 'figure');
    cell(head, 'th', 'What is there', 'col');
    const body = table.createTBody();
    let beyond = false;
    for (const [x, notes] of places(view)) {
      const row = body.insertRow();
      cell(row, 'th', units.format(x, data.x.unit, 4), 'row').className = 'figure';
      for (const one of shown) {
        const value = view.rawAt(one, x);
        const extrapolated = value !== null && !curve.isCovered(one.series, x);
        beyond = beyond || extrapolated;
        cell(row, 'td', units.format(value, data.y.unit, 4) + (extrapolated ? '*' : ''));
      }
      cell(row, 'td', notes.join(', ')).className = 'chart-what';
    }
    const points = view.mainPoints().length;
    caption.textContent = `${data.y.label} over ${data.x.label}: `
      + (body.rows.length < points ? `${body.rows.length} rows chosen from ${points} points; the ends, marks and extremes are among them.` : `all ${points} points and the marks.`)
      + ' Between its points a curve is read as it is drawn.'
      + (beyond ? ' * extrapolated beyond its evidence.' : '');
    numbers.querySelector('.chart-rows').replaceChildren(table);
    numbers.dataset.stale = 'no';
  }

  // Filled when opened: most readers never ask, and a preview should not pay for it.
  function attach(view) {
    const details = document.createElement('details');
    details.className = 'chart-numbers';
    const summary = document.createElement('summary');
    summary.textContent = 'Numbers';
    const hidden = document.createElement('span');
    hidden.className = 'chart-unseen';
    hidden.textContent = ' of ' + view.title;
    summary.append(hidden);
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'chart-button';
    button.textContent = 'Download CSV';
    button.addEventListener('click', () => download(view));
    const rows = document.createElement('div');
    rows.className = 'chart-rows';
    rows.tabIndex = 0;
    rows.setAttribute('role', 'region');
    rows.setAttribute('aria-label', 'Numbers of ' + view.title);
    details.append(summary, button, rows);
    details.addEventListener('toggle', () => {
      if (details.open && details.dataset.stale !== 'no') {
        fill(view);
      }
    });
    return details;
  }

  function changed(view) {
    view.numbers.dataset.stale = 'yes';
    if (view.numbers.open) {
      fill(view);
    }
  }

  Stillrail.numbers = { attach, changed, csv };
})();
