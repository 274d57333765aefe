// The carrier ribbon: which branch carries most of the current at each frequency, on the axis of the chart below it.
//
//   <figure class="ribbon" data-ribbon data-axis="impedance" id="ribbon">
//     <figcaption>…</figcaption> <div class="ribbon-plot"></div> <div class="chart-data" id="ribbon-data" hidden>JSON</div>
//
// The JSON (frequencies in Hz; keys of branches are those of the charts' series, so colour and weave agree):
//   summary   sentence for those who cannot see it
//   from, to  ends of the axis, used where no chart is named by data-axis
//   spans*    [{ from*, to*, branch*, label, technology }]      the carrier, in order of frequency
//   gaps      [{ from*, to*, label }]                           |Z| exceeds its limit: the ribbon is broken open
//   knots     [{ at*, a, b, labelA, labelB, q }]                two ring against each other; without a key it is no branch
//   where     whose current it is, put behind the figcaption
//   brackets  [{ label*, from*, to* }]                          holds the charge, calms the loop, swallows the switching
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { axes, charts, style, units } = Stillrail;

  const BAND = { top: 52, height: 34 };
  const HEIGHT = 128;
  const ribbons = new Map();

  const { svg } = style;

  function labelOf(ribbon, branch, given) {
    const known = ribbon.data.spans.find((span) => span.branch === branch && span.label);
    return given || (known ? known.label : branch);
  }

  // The frame of the chart below, or our own margins on the data's own ends.
  function frame(ribbon) {
    const width = ribbon.plot.clientWidth;
    const view = charts.view(ribbon.figure.dataset.axis);
    if (view && view.chart) {
      const shift = view.canvas.getBoundingClientRect().left - ribbon.plot.getBoundingClientRect().left;
      const [from, to] = view.group.shown;
      const { left, right } = view.chart.chartArea;
      return { width, view, left: left + shift, right: right + shift, from, to };
    }
    return { width, view: null, left: axes.LEFT, right: width - axes.labelRoom(width), from: ribbon.data.from, to: ribbon.data.to };
  }

  const along = (frame, hertz) => frame.left + (frame.right - frame.left)
    * Math.min(1, Math.max(0, Math.log(hertz / frame.from) / Math.log(frame.to / frame.from)));
  const outside = (frame, from, to) => from >= frame.to || to <= frame.from;

  // Words on a white plate, so that no weave runs through them; none where there is no room.
  function plate(parent, text, middle, baseline, room, className) {
    const label = svg('text', { x: middle, y: baseline, 'text-anchor': 'middle', class: className }, text);
    parent.append(label);
    let shown = text;
    while (shown.length > 2 && label.getComputedTextLength() > room) {
      shown = shown.slice(0, -1);
      label.textContent = shown.trim() + '…';
    }
    if (label.getComputedTextLength() > room) {
      label.remove();
      return;
    }
    const width = label.getComputedTextLength() + 8;
    parent.insertBefore(svg('rect', { x: middle - width / 2, y: baseline - 12, width, height: 16, rx: 2, class: 'ribbon-plate' }), label);
  }

  // A torn edge: a fixed zigzag, no two prints differ.
  function torn(x, side) {
    const { top, height } = BAND;
    const steps = 6;
    let path = '';
    for (let i = 0; i <= steps; i++) {
      path += `${i === 0 ? 'M' : 'L'}${x + (i % 2 === 0 ? 0 : 4 * side)} ${top + height * i / steps}`;
    }
    return path;
  }

  function drawBrackets(picture, where, data) {
    for (const bracket of data.brackets || []) {
      if (outside(where, bracket.from, bracket.to)) {
        continue;
      }
      const left = along(where, bracket.from) + 2;
      const right = along(where, bracket.to) - 2;
      const middle = (left + right) / 2;
      picture.append(svg('path', { class: 'ribbon-bracket', d: `M${left} 40V32H${right}V40M${middle} 32V27` }));
      const text = svg('text', { x: middle, y: 22, 'text-anchor': 'middle', class: 'ribbon-bracket-text' }, bracket.label);
      picture.append(text);
      const half = text.getComputedTextLength() / 2;
      text.setAttribute('x', Math.max(half + 2, Math.min(middle, where.width - half - 2)));
    }
  }

  function drawSpans(ribbon, picture, where) {
    const { data, figure } = ribbon;
    const { top, height } = BAND;
    const definitions = svg('defs');
    picture.append(definitions);
    const woven = new Set();
    for (const span of data.spans) {
      if (outside(where, span.from, span.to)) {
        continue;
      }
      const id = `${figure.id}-weave-${span.branch}`.replace(/[^\w-]/g, '_');
      if (!woven.has(id)) {
        woven.add(id);
        definitions.append(style.texture(id, { key: span.branch, role: 'branch', technology: span.technology }));
      }
      const left = along(where, span.from);
      const right = along(where, span.to);
      const piece = svg('rect', { x: left, y: top, width: Math.max(1, right - left), height, fill: `url(#${id})`, class: 'ribbon-span' });
      piece.append(svg('title', {}, `${labelOf(ribbon, span.branch, span.label)} carries most of the current from `
        + `${units.format(span.from, 'Hz', 3)} to ${units.format(span.to, 'Hz', 3)}`));
      picture.append(piece);
    }
    picture.append(svg('path', { class: 'ribbon-edge', d: `M${where.left} ${top}H${where.right}M${where.left} ${top + height}H${where.right}` }));
  }

  const nameOf = (gap) => gap.label || 'over the limit';

  function drawGaps(picture, where, data) {
    const { top, height } = BAND;
    for (const gap of data.gaps || []) {
      if (outside(where, gap.from, gap.to)) {
        continue;
      }
      const left = along(where, gap.from);
      const right = Math.max(along(where, gap.to), left + 10);
      const hole = svg('rect', { x: left, y: top - 2, width: right - left, height: height + 4, class: 'ribbon-gap' });
      const text = nameOf(gap);
      hole.append(svg('title', {}, `${text}: ${units.format(gap.from, 'Hz', 3)} to ${units.format(gap.to, 'Hz', 3)}`));
      picture.append(hole, svg('path', { class: 'ribbon-tear', d: torn(left, 1) }), svg('path', { class: 'ribbon-tear', d: torn(right, -1) }));
    }
  }

  // Free parts of each span, so that a name is not written over a gap or a knot.
  function nameSpans(ribbon, picture, where) {
    const { data } = ribbon;
    const taken = [
      ...(data.gaps || []).map((gap) => [along(where, gap.from), Math.max(along(where, gap.to), along(where, gap.from) + 10)]),
      ...(data.knots || []).map((knot) => [along(where, knot.at) - 16, along(where, knot.at) + 16]),
    ];
    for (const span of data.spans) {
      if (outside(where, span.from, span.to)) {
        continue;
      }
      let free = [[along(where, span.from), along(where, span.to)]];
      for (const [from, to] of taken) {
        free = free.flatMap(([left, right]) => [[left, Math.min(right, from)], [Math.max(left, to), right]])
          .filter(([left, right]) => right > left);
      }
      const [widest] = free.sort((a, b) => (b[1] - b[0]) - (a[1] - a[0]));
      if (widest) {
        plate(picture, labelOf(ribbon, span.branch, span.label), (widest[0] + widest[1]) / 2, BAND.top + BAND.height / 2 + 4,
          widest[1] - widest[0] - 12, 'ribbon-name');
      }
    }
  }

  // Two strands crossing.
  function drawKnots(picture, where, data) {
    const { top, height } = BAND;
    const middle = top + height / 2;
    for (const knot of (data.knots || []).filter(({ at }) => !outside(where, at, at))) {
      const x = along(where, knot.at);
      const strand = (key, up) => {
        const from = up ? middle + 9 : middle - 9;
        const to = up ? middle - 9 : middle + 9;
        const d = `M${x - 17} ${from}C${x - 4} ${from} ${x + 4} ${to} ${x + 17} ${to}`;
        return [svg('path', { d, class: 'ribbon-strand-back' }), svg('path', { d, class: 'ribbon-strand', stroke: style.colour({ key, role: key ? 'branch' : 'reference' }) })];
      };
      picture.append(svg('ellipse', { cx: x, cy: middle, rx: 18, ry: height / 2 + 1, class: 'ribbon-knot' }),
        ...strand(knot.a, true), ...strand(knot.b, false));
    }
  }

  // Under the ribbon: who rings with whom, and what a gap means; what would touch goes to a second line.
  function drawCaptions(ribbon, picture, where) {
    const { data } = ribbon;
    const foot = BAND.top + BAND.height;
    const captions = [
      ...(data.knots || []).filter(({ at }) => !outside(where, at, at)).map((knot) => ({
        x: along(where, knot.at), kind: 'ribbon-knot-text',
        text: `${labelOf(ribbon, knot.a, knot.labelA)} rings with ${labelOf(ribbon, knot.b, knot.labelB)}`
          + (typeof knot.q === 'number' ? `, Q ${units.format(knot.q, '', 2)}` : ''),
      })),
      ...(data.gaps || []).filter(({ from, to }) => !outside(where, from, to)).map((gap) => ({
        x: (along(where, gap.from) + along(where, gap.to)) / 2, kind: 'ribbon-gap-text', text: nameOf(gap),
      })),
    ].sort((a, b) => a.x - b.x);
    const ends = [-Infinity, -Infinity];
    let said = '';
    for (const { x, kind, text } of captions) {
      const words = svg('text', { 'text-anchor': 'middle', class: kind }, text);
      picture.append(words);
      const half = words.getComputedTextLength() / 2;
      const place = Math.max(half + 2, Math.min(x, where.width - half - 2));
      // Next to one that says the same, the hole speaks for itself.
      if (kind === 'ribbon-gap-text' && text === said && place - half <= ends[0]) {
        words.remove();
        continue;
      }
      said = text;
      const row = place - half > ends[0] ? 0 : place - half > ends[1] ? 1 : ends[0] <= ends[1] ? 0 : 1;
      ends[row] = place + half + 10;
      words.setAttribute('x', place);
      words.setAttribute('y', foot + 18 + row * 15);
      picture.append(svg('path', { class: 'ribbon-knot-stem', d: `M${x} ${foot + 2}V${foot + 7 + row * 15}` }));
    }
  }

  function drawHair(ribbon) {
    const { where, hair } = ribbon;
    hair.replaceChildren();
    const at = where.view ? where.view.group.at : null;
    if (at !== null && at >= where.from && at <= where.to) {
      const x = along(where, at);
      hair.append(svg('line', { class: 'chart-hair', x1: x, x2: x, y1: BAND.top - 10, y2: HEIGHT }));
    }
  }

  function spoken(ribbon) {
    const { data } = ribbon;
    const part = (span) => `${labelOf(ribbon, span.branch, span.label)} from ${units.format(span.from, 'Hz', 2)} to ${units.format(span.to, 'Hz', 2)}`;
    return data.summary || [
      'Most of the current is carried by ' + data.spans.map(part).join('; '),
      ...(data.gaps || []).map((gap) => `over the limit from ${units.format(gap.from, 'Hz', 2)} to ${units.format(gap.to, 'Hz', 2)}`),
      ...(data.knots || []).map((knot) => `${labelOf(ribbon, knot.a, knot.labelA)} and ${labelOf(ribbon, knot.b, knot.labelB)} ring at ${units.format(knot.at, 'Hz', 3)}`),
    ].join('. ');
  }

  function draw(ribbon) {
    const { data, plot } = ribbon;
    if (plot.clientWidth === 0) {
      return;
    }
    const where = frame(ribbon);
    ribbon.where = where;
    const picture = svg('svg', { class: 'ribbon-picture', width: where.width, height: HEIGHT, viewBox: `0 0 ${where.width} ${HEIGHT}`, role: 'img' });
    picture.setAttribute('aria-label', spoken(ribbon));
    plot.replaceChildren(picture);
    drawBrackets(picture, where, data);
    drawSpans(ribbon, picture, where);
    drawGaps(picture, where, data);
    nameSpans(ribbon, picture, where);
    drawKnots(picture, where, data);
    drawCaptions(ribbon, picture, where);
    ribbon.hair = svg('g');
    picture.append(ribbon.hair);
    drawHair(ribbon);
  }

  function scan() {
    for (const figure of document.querySelectorAll('figure[data-ribbon]')) {
      let ribbon = ribbons.get(figure.id);
      if (!ribbon || ribbon.figure !== figure) {
        ribbon = { figure, plot: figure.querySelector(':scope > .ribbon-plot'), text: null, data: { spans: [] } };
        ribbons.set(figure.id, ribbon);
        ribbon.watcher = new ResizeObserver(() => draw(ribbon));
        ribbon.watcher.observe(ribbon.plot);
      }
    }
    for (const [id, ribbon] of ribbons) {
      if (!ribbon.figure.isConnected) {
        ribbon.watcher.disconnect();
        ribbons.delete(id);
      }
    }
    ribbons.forEach(read);
  }

  function read(ribbon) {
    const text = charts.textOf(ribbon.figure);
    if (text !== ribbon.text) {
      ribbon.text = text;
      try {
        ribbon.data = { spans: [], ...JSON.parse(text || '{}') };
        charts.sayWhere(ribbon.figure, ribbon.data.where);
      } catch (error) {
        ribbon.data = { spans: [], summary: 'The numbers of this ribbon could not be read.' };
      }
    }
  }

  charts.join({
    scan,
    keys: () => {
      scan();
      return [...ribbons.values()].map((ribbon) => ribbon.data.spans.map((span) => span.branch));
    },
  });
  document.addEventListener('stillrail:layout', () => ribbons.forEach(draw));
  document.addEventListener('stillrail:cursor', () => ribbons.forEach((ribbon) => ribbon.where && drawHair(ribbon)));
})();
