// Charts of a page.
//
// A page holds, through the fragments of templates/charts.html,
//
//   <figure class="chart" data-chart id="impedance">            (data-size="tall" or "short", data-group="...": both optional)
//     <figcaption>Impedance</figcaption>
//     <div class="chart-plot"></div>                            (filled here)
//     <div class="chart-data" id="impedance-data" hidden>JSON as text</div>
//   </figure>
//
// The server writes one JSON value a chart and nothing else. New data come in either way:
//   - a reply that carries <div class="chart-data" id="impedance-data" hidden hx-swap-oob="true">…</div>, or
//   - a swap of any region with the whole figure in it: the new figure takes over the old one's canvas.
// Both change the chart in place: zoom, cursor, hidden curves and open numbers stay. Whoever changes data by script calls
// Stillrail.charts.scan() or dispatches 'stillrail:data' on document.
//
// The JSON (SI units throughout; a missing number is null; everything not marked * may be left out):
//   summary   sentence for those who cannot see the picture
//   x*, y*    { label*, unit: "Hz", scale: "log" | "linear", min, max, step }       unit "", "°", "dB", "%" take no prefix
//   xs        x values shared by every series that has none of its own
//   series*   [{ key*, label*, y*, x, role: "bank" | "branch" | "measured" | "reference" | "limit",
//                technology, kind: "measured" | "fitted" | "exact" | "datasheet" | "estimated" | "extrapolated",
//                validFrom, validTo   where the evidence begins and ends: dotted beyond,
//                low, high            arrays beside y: the grey band of uncertainty,
//                side: "above" | "below"   of a limit: which side is forbidden (above),
//                title                longer name for the tooltip of its label,
//                hidden: true         not drawn until asked for }]
//             A branch has the same key in every chart, table and ribbon of the page, and so the same colour.
//   marks     [{ at*, label* }]                                 vertical lines: crossover, switching, an edge of the load
//   bands     [{ from, to, label, kind: "damping" | "quiet" | other }]
//   points    [{ x*, y*, label* }]                              rings on the paper: an anti-resonance and its Q
//   notes     ["…"]                                             sentences under the chart
//   where     where it is seen ("at the load"), put behind the figcaption
//   empty     what stands there when series is empty
//   file      name of the CSV file without its ending (the figure's id)
//
// Charts whose x unit and scale agree form one group: aligned, zoomed together, one hairline through all. data-group sets
// a group by name instead. Cursor read-outs: chart-table.js. Ribbon: ribbon.js. Voltage ruler: ruler.js.
//
// To point at what explains a verdict: a button with data-focus-series="bank bulk", data-focus-from, data-focus-to and
// data-focus-charts="impedance esr" (all but the first optional) dims the rest while pressed; a second press gives it back.
// By script: Stillrail.charts.focus({ series: [...], from, to, charts: [...] }) and focus(null).
//
// Events on document: stillrail:cursor { group, at }, stillrail:layout { group } after a scan, resize or zoom.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { axes, cursor, curve, labels, marks, numbers, style, units } = Stillrail;

  const HELP = 'Arrow keys move the cursor by point, with Shift by decade; Page Up and Page Down by mark; '
    + 'plus and minus zoom, 0 shows everything. Drag over a span to zoom into it.';

  const views = new Map();
  const listeners = [];
  const hiddenKeys = new Map();
  let printing = false;

  const announce = (name, detail) => document.dispatchEvent(new CustomEvent(name, { detail }));

  function element(name, className, parent) {
    const made = document.createElement(name);
    made.className = className;
    parent.append(made);
    return made;
  }

  // Behind the title of a figure: where what it shows is seen, or nothing.
  function sayWhere(figure, where) {
    const caption = figure.querySelector(':scope > figcaption');
    const said = caption.querySelector(':scope > .where') || element('span', 'where', caption);
    said.textContent = where ? ', ' + where : '';
  }

  // The text that the server wrote for a figure, wherever a swap has put it.
  function textOf(figure) {
    const inside = figure.querySelector(':scope > .chart-data');
    const named = document.getElementById(figure.dataset.source || figure.id + '-data');
    return (named || inside || { textContent: '' }).textContent.trim();
  }

  class View {
    constructor(figure) {
      this.id = figure.id;
      this.figure = figure;
      this.text = null;
      this.data = null;
      this.shown = [];
      this.uncertain = [];
      this.focus = null;
      this.chart = null;
    }

    get title() {
      const caption = this.figure.querySelector(':scope > figcaption');
      return caption ? caption.textContent.trim() : this.id;
    }

    // Puts the kept picture into a figure that a swap brought.
    adopt(figure) {
      for (const part of [this.plot, this.foot]) {
        if (part) {
          const place = figure.querySelector(':scope > .' + part.classList[0]);
          if (place && place !== part) {
            place.replaceWith(part);
          } else if (!place) {
            figure.append(part);
          }
        }
      }
      this.figure = figure;
    }

    furnish() {
      const { figure } = this;
      this.plot = figure.querySelector(':scope > .chart-plot') || element('div', 'chart-plot', figure);
      this.plot.replaceChildren();
      this.canvas = element('canvas', 'chart-canvas', this.plot);
      this.canvas.setAttribute('role', 'img');
      this.overlay = style.svg('svg', { class: 'chart-overlay', 'aria-hidden': 'true' });
      this.leaders = style.svg('g');
      this.hairline = style.svg('g');
      this.selection = style.svg('g');
      this.overlay.append(this.leaders, this.hairline, this.selection);
      this.plot.append(this.overlay);
      this.slider = element('div', 'chart-cursor', this.plot);
      this.slider.tabIndex = 0;
      this.slider.setAttribute('role', 'slider');
      this.slider.setAttribute('aria-label', 'Cursor of ' + this.title);
      this.labels = element('div', 'chart-labels', this.plot);
      this.labels.setAttribute('role', 'group');
      this.labels.setAttribute('aria-label', 'Curves of ' + this.title);

      this.foot = figure.querySelector(':scope > .chart-foot') || element('div', 'chart-foot', figure);
      this.foot.replaceChildren();
      this.notes = element('div', 'chart-notes', this.foot);
      this.reset = element('button', 'chart-button chart-reset', this.foot);
      this.reset.type = 'button';
      this.reset.textContent = 'Show the whole axis';
      this.reset.hidden = true;
      this.reset.addEventListener('click', () => {
        this.group.zoom(null);
        this.slider.focus();
      });
      this.numbers = numbers.attach(this);
      this.foot.append(this.numbers);
      const help = element('p', 'chart-unseen', this.foot);
      help.id = this.id + '-keys';
      help.textContent = HELP;
      this.slider.setAttribute('aria-describedby', help.id);

      const page = getComputedStyle(figure);
      this.fontFamily = page.fontFamily;
      const font = { family: this.fontFamily, size: 11 };
      this.font = font;
      this.chart = new window.Chart(this.canvas, {
        type: 'line',
        data: { datasets: [] },
        plugins: [marks],
        options: {
          responsive: false, maintainAspectRatio: false, animation: false, parsing: false, normalized: true, events: [],
          devicePixelRatio: Math.max(1, window.devicePixelRatio || 1),
          plugins: { legend: { display: false }, tooltip: { enabled: false } },
          elements: { point: { radius: 0, hitRadius: 0, hoverRadius: 0 }, line: { tension: 0, borderJoinStyle: 'round' } },
          layout: { padding: { right: axes.labelRoom(this.plot.clientWidth), top: 8, left: 0, bottom: 0 }, autoPadding: false },
          scales: this.scales(),
        },
      });
      this.chart.stillrail = this;
      this.size = [this.plot.clientWidth, this.plot.clientHeight];
      this.chart.resize(...this.size);
      this.watcher = new ResizeObserver(() => this.fit());
      this.watcher.observe(this.plot);
      cursor.listen(this);
    }

    get logX() {
      return this.data.x.scale === 'log';
    }

    get logY() {
      return this.data.y.scale === 'log';
    }

    parse(text) {
      const data = JSON.parse(text);
      if (!data.x || !data.y || !Array.isArray(data.series)) {
        throw new Error('x, y and series are needed');
      }
      this.data = data;
      sayWhere(this.figure, data.where);
      const hidden = hiddenKeys.get(this.id) || new Map();
      this.dropped = 0;
      this.shown = data.series.map((series) => {
        const key = series.key ?? series.label;
        const { points, dropped } = curve.points(series, data.xs, this.logX, this.logY);
        this.dropped += dropped;
        return { series: { ...series, key }, points, hidden: hidden.get(key) ?? series.hidden === true, faint: false };
      });
      this.uncertain = this.shown.filter(({ series }) => series.low && series.high).map((of) => {
        const { series } = of;
        const xs = series.x || data.xs || [];
        const usable = xs.map((unused, i) => i).filter((i) => Number.isFinite(series.low[i] ?? NaN)
          && Number.isFinite(series.high[i] ?? NaN) && (!this.logY || series.high[i] > 0));
        const smallest = this.logY ? Number.MIN_VALUE : -Infinity;
        return {
          of, x: usable.map((i) => xs[i]), high: usable.map((i) => series.high[i]),
          low: usable.map((i) => Math.max(smallest, series.low[i])),
        };
      });
      this.group = cursor.groupOf(this.figure.dataset.group || `${data.x.unit || data.x.label} ${data.x.scale || 'linear'}`);
    }

    scales() {
      const [low, high] = this.group.shown || [1, 10];
      const { x, y } = this.data;
      const bounds = this.bounds(low, high);
      return {
        x: axes.scale('x', { ...x, low, high }, this.font || {}),
        y: axes.scale('y', { ...y, low: y.min ?? bounds[0], high: y.max ?? bounds[1] }, this.font || {}),
      };
    }

    // The y range of what can be seen, so that zooming in x opens the curve in y as well.
    bounds(from, to) {
      let low = Infinity;
      let high = -Infinity;
      const take = (value) => {
        if (Number.isFinite(value) && (!this.logY || value > 0)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      };
      for (const shown of this.shown.filter((one) => !one.hidden)) {
        for (const point of shown.points) {
          if (point.x >= from && point.x <= to) {
            take(point.y);
          }
        }
        take(this.valueAt(shown, from));
        take(this.valueAt(shown, to));
      }
      for (const band of this.uncertain.filter(({ of }) => !of.hidden)) {
        band.x.forEach((x, i) => {
          if (x >= from && x <= to) {
            take(band.high[i]);
            take(this.logY && band.low[i] < band.high[i] / 100 ? NaN : band.low[i]);
          }
        });
      }
      if (!(high >= low)) {
        return this.logY ? [0.001, 1] : [0, 1];
      }
      return this.logY ? units.logBounds(low, high) : units.linearBounds(low, high);
    }

    // Value for drawing: what the axis cannot carry is no value. rawAt keeps it for read-outs.
    valueAt(shown, x) {
      const value = this.rawAt(shown, x);
      return value === null || (this.logY && value <= 0) ? null : value;
    }

    rawAt(shown, x) {
      return curve.valueAt(shown.points, x, this.logX, this.logY);
    }

    mainPoints() {
      const candidates = this.shown.filter((one) => !one.hidden && one.series.role !== 'limit' && one.points.length > 0);
      const main = candidates.find((one) => one.series.role === 'bank')
        || [...candidates].sort((a, b) => b.points.length - a.points.length)[0];
      return main ? main.points : [];
    }

    marksInOrder() {
      const [low, high] = this.group.shown;
      return (this.data.marks || []).map((mark) => mark.at).filter((at) => at >= low && at <= high).sort((a, b) => a - b);
    }

    datasets() {
      const order = { bank: 0, limit: 2, reference: 3 };
      return this.shown.flatMap((shown) => curve.pieces(shown.series, shown.points).map((piece) => ({
        data: piece.points,
        hidden: shown.hidden,
        order: order[shown.series.role] ?? 1,
        borderColor: shown.faint ? style.faded(style.colour(shown.series), 0.22) : style.colour(shown.series),
        borderWidth: style.width(shown.series),
        borderDash: style.dash(shown.series, !piece.covered),
        spanGaps: false,
      })));
    }

    emphasise() {
      const { focus } = this;
      const keys = focus && focus.series && focus.series.length > 0 ? new Set(focus.series) : null;
      for (const shown of this.shown) {
        shown.faint = keys !== null && !keys.has(shown.series.key);
      }
    }

    draw() {
      const { chart, data } = this;
      this.emphasise();
      const message = this.shown.some((one) => one.points.length > 0) ? '' : data.empty || 'No curve yet.';
      this.plot.classList.toggle('chart-empty', message !== '');
      this.plot.dataset.message = message;
      this.canvas.setAttribute('aria-label', data.summary || message || `${this.title}: ${data.y.label} over ${data.x.label} of `
        + this.shown.map((one) => one.series.label).join(', '));
      chart.data.datasets = this.datasets();
      chart.options.scales = this.scales();
      chart.options.layout.padding.top = this.headroom();
      chart.update('none');
      labels.build(this);
      this.settle();
      this.remark();
      numbers.changed(this);
    }

    // Marks that stand close need two rows above the frame.
    headroom() {
      const rows = marks.place(this, this.canvas.getContext('2d'), axes.LEFT, this.size[0] - axes.labelRoom(this.size[0]), this.size[0])
        .reduce((most, mark) => Math.max(most, mark.row + 1), 0);
      return 8 + 13 * rows;
    }

    remark() {
      const sentences = [...(this.data.notes || [])];
      if (this.dropped > 0) {
        sentences.push(`${this.dropped} ${this.dropped === 1 ? 'point is' : 'points are'} zero or negative and cannot stand on a `
          + 'logarithmic axis: the line breaks there. The numbers below hold them.');
      }
      this.notes.replaceChildren(...sentences.map((sentence) => {
        const line = document.createElement('p');
        line.textContent = sentence;
        return line;
      }));
    }

    rescale() {
      this.chart.options.scales = this.scales();
      this.chart.options.layout.padding.top = this.headroom();
      this.chart.update('none');
      this.settle();
    }

    // Everything that lies over the canvas follows its plot area.
    settle() {
      const { chartArea: area } = this.chart;
      this.slider.style.left = `${area.left}px`;
      this.slider.style.top = `${area.top}px`;
      this.slider.style.width = `${area.right - area.left}px`;
      this.slider.style.height = `${area.bottom - area.top}px`;
      this.overlay.setAttribute('viewBox', `0 0 ${this.chart.width} ${this.chart.height}`);
      this.reset.hidden = this.group.zoomed === null;
      labels.place(this);
      cursor.drawHairline(this, this.group);
    }

    fit() {
      const { clientWidth: width, clientHeight: height } = this.plot;
      if (width === 0 || height === 0 || (width === this.size[0] && height === this.size[1])) {
        return;
      }
      this.size = [width, height];
      this.chart.options.layout.padding.right = axes.labelRoom(width);
      this.chart.options.layout.padding.top = this.headroom();
      this.chart.resize(width, height);
      this.chart.update('none');
      this.settle();
      announce('stillrail:layout', { group: this.group.name });
    }

    toggle(key) {
      const shown = this.shown.find((one) => one.series.key === key);
      shown.hidden = !shown.hidden;
      if (!hiddenKeys.has(this.id)) {
        hiddenKeys.set(this.id, new Map());
      }
      hiddenKeys.get(this.id).set(key, shown.hidden);
      shown.label.setAttribute('aria-pressed', String(!shown.hidden));
      this.chart.data.datasets = this.datasets();
      this.rescale();
    }

    complain(reason) {
      const { figure } = this;
      let line = figure.querySelector(':scope > .chart-problem');
      if (!reason) {
        if (line) {
          line.remove();
        }
        return;
      }
      line = line || element('p', 'chart-problem', figure);
      line.setAttribute('role', 'alert');
      line.textContent = 'The numbers of this chart could not be read, so what it shows may be old: ' + reason;
    }

    leave() {
      if (this.group) {
        this.group.views.delete(this);
      }
      if (this.chart) {
        this.watcher.disconnect();
        this.chart.destroy();
      }
    }
  }

  function collect() {
    for (const figure of document.querySelectorAll('figure[data-chart]')) {
      const known = views.get(figure.id);
      if (!known) {
        views.set(figure.id, new View(figure));
      } else if (known.figure !== figure) {
        known.adopt(figure);
      }
    }
    for (const [id, view] of views) {
      if (!view.figure.isConnected) {
        view.leave();
        views.delete(id);
      }
    }
  }

  function read(view) {
    const text = textOf(view.figure);
    if (text === view.text) {
      return false;
    }
    view.text = text;
    const former = view.group;
    try {
      view.parse(text || '{"x":{"label":""},"y":{"label":""},"series":[]}');
      view.complain(null);
    } catch (error) {
      view.complain(error.message);
      return false;
    }
    if (former && former !== view.group) {
      former.views.delete(view);
    }
    view.group.views.add(view);
    return true;
  }

  // Finds new figures and new data; cheap when nothing changed.
  function scan() {
    collect();
    const changed = [...views.values()].filter(read);
    const coloured = ({ series }) => !['bank', 'limit', 'reference'].includes(series.role);
    style.assign([
      ...[...views.values()].map((view) => view.shown.filter(coloured).map(({ series }) => series.key)),
      ...listeners.flatMap((listener) => listener.keys ? listener.keys() : []),
    ]);
    const stretched = new Set([...new Set([...views.values()].map((view) => view.group))]
      .filter((group) => group && group.measure()));
    for (const view of views.values()) {
      if (!view.data) {
        continue;
      }
      const fresh = view.chart === null;
      if (fresh) {
        view.furnish();
      }
      if (fresh || changed.includes(view)) {
        view.draw();
      } else if (stretched.has(view.group)) {
        view.rescale();
      }
    }
    listeners.forEach((listener) => listener.scan());
    announce('stillrail:layout', {});
    Stillrail.cursorTable.refreshAll();
  }

  function focus(wish) {
    for (const view of views.values()) {
      const meant = wish && (!wish.charts || wish.charts.length === 0 || wish.charts.includes(view.id));
      view.focus = meant ? wish : null;
      const folded = meant && view.figure.closest('details');
      if (folded && wish.charts && wish.charts.length > 0) {
        folded.open = true;
      }
      if (view.chart) {
        view.emphasise();
        view.chart.data.datasets = view.datasets();
        view.chart.update('none');
        labels.place(view);
      }
    }
    announce('stillrail:focus', wish || {});
  }

  const words = (text) => (text || '').split(/\s+/).filter(Boolean);
  const number = (text) => text === undefined || text === '' ? undefined : Number(text);

  function onClick(event) {
    const button = event.target.closest('[data-focus-series]');
    if (!button) {
      return;
    }
    const pressed = button.getAttribute('aria-pressed') === 'true';
    document.querySelectorAll('[data-focus-series][aria-pressed="true"]').forEach((other) => other.setAttribute('aria-pressed', 'false'));
    button.setAttribute('aria-pressed', String(!pressed));
    focus(pressed ? null : {
      series: words(button.dataset.focusSeries), charts: words(button.dataset.focusCharts),
      from: number(button.dataset.focusFrom), to: number(button.dataset.focusTo),
    });
  }

  // Paper: greys, a width that fits, and twice the resolution.
  function print(on) {
    if (printing === on) {
      return;
    }
    printing = on;
    document.documentElement.classList.toggle('printing', on);
    style.greyed(on);
    for (const view of views.values()) {
      if (view.chart) {
        view.chart.options.devicePixelRatio = on ? 2 : Math.max(1, window.devicePixelRatio || 1);
        view.size = [0, 0];
        view.fit();
        view.draw();
      }
    }
    listeners.forEach((listener) => listener.scan(true));
    announce('stillrail:layout', {});
    Stillrail.cursorTable.refreshAll();
  }

  Stillrail.charts = {
    scan, focus, announce, textOf,
    view: (id) => views.get(id),
    // Other pictures on the page (ribbon, ruler) are read in the same pass.
    sayWhere,
    join: (listener) => listeners.push(listener),
  };

  document.addEventListener('click', onClick);
  for (const name of ['htmx:afterSwap', 'htmx:oobAfterSwap', 'htmx:load', 'stillrail:data']) {
    document.addEventListener(name, scan);
  }
  window.addEventListener('beforeprint', () => print(true));
  window.addEventListener('afterprint', () => print(false));
  // 'defer' runs the files in order, so the others have joined by now.
  document.addEventListener('DOMContentLoaded', scan);
})();
