// The voltage ruler: the allowed window as a bar to both sides of the nominal voltage, filled by what takes it up; what
// does not fit runs on beyond the end, hatched.
//
//   <figure class="ruler" data-ruler id="ruler">
//     <figcaption>…</figcaption> <div class="ruler-plot"></div> <div class="chart-data" id="ruler-data" hidden>JSON</div>
//
// The JSON:
//   summary                    sentence for those who cannot see it
//   unit                       "V"
//   nominal                    the rail's voltage, printed at the centre when given
//   allowedPlus, allowedMinus  sizes of the window above and below, both positive
//   sharesPlus, sharesMinus    [{ label*, value*, key }] in order from the centre; key accuracy, regulation, ripple or step
//                              fixes the tint (else by place); value null is 'unknown' and is listed as such
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { charts, style, units } = Stillrail;
  const { svg } = style;

  const BAR = { top: 30, height: 32 };
  const SIDE = 12;
  // Four steps of lightness as well as of hue: a grey print keeps them apart.
  const TINTS = { accuracy: '#2f3a42', regulation: '#d3d9dd', ripple: '#56B4E9', step: '#0072B2' };
  const DARK = new Set([TINTS.accuracy, TINTS.step]);
  const ORDER = Object.values(TINTS);
  const rulers = new Map();

  const known = (share) => typeof share.value === 'number' && Number.isFinite(share.value);
  const total = (shares) => shares.filter(known).reduce((sum, share) => sum + Math.max(0, share.value), 0);
  const tint = (share, place) => TINTS[share.key] || ORDER[place % ORDER.length];

  function hatching(id) {
    const pattern = svg('pattern', { id, width: 7, height: 7, patternUnits: 'userSpaceOnUse' });
    pattern.append(svg('rect', { width: 7, height: 7, fill: '#ffffff' }),
      svg('path', { d: 'M-2 9L9 -2M-2 2L2 -2M5 9L9 5', stroke: '#a33d00', 'stroke-width': 1.8 }));
    return pattern;
  }

  function drawSide(picture, data, geometry, sign) {
    const { centre, scale, id } = geometry;
    const shares = (sign > 0 ? data.sharesPlus : data.sharesMinus) || [];
    const allowed = sign > 0 ? data.allowedPlus : data.allowedMinus;
    const at = (volts) => centre + sign * volts * scale;
    const { top, height } = BAR;
    const box = (from, to, attributes) => svg('rect', {
      x: Math.min(at(from), at(to)), y: top, width: Math.max(0.5, Math.abs(at(to) - at(from))), height, ...attributes,
    });
    picture.append(box(0, allowed, { class: 'ruler-window' }));
    let used = 0;
    shares.forEach((share, place) => {
      if (!known(share) || share.value <= 0) {
        return;
      }
      const next = used + share.value;
      const title = `${share.label}: ${units.format(share.value, data.unit, 3)}`;
      if (used < allowed) {
        const piece = box(used, Math.min(next, allowed), { fill: tint(share, place), class: 'ruler-share' });
        piece.append(svg('title', {}, title));
        picture.append(piece);
        const word = svg('text', {
          x: at((used + Math.min(next, allowed)) / 2), y: top + height / 2 + 4, 'text-anchor': 'middle',
          class: DARK.has(tint(share, place)) ? 'ruler-in ruler-in-dark' : 'ruler-in',
        }, share.label);
        picture.append(word);
        if (word.getComputedTextLength() > (Math.min(next, allowed) - used) * scale - 8) {
          word.remove();
        }
      }
      if (next > allowed) {
        const piece = box(Math.max(used, allowed), next, { fill: `url(#${id})`, class: 'ruler-over' });
        piece.append(svg('title', {}, title + ', beyond the window'));
        picture.append(piece);
      }
      used = next;
    });
    const end = at(allowed);
    picture.append(svg('path', { class: 'ruler-end', d: `M${end} ${top - 8}V${top + height + 8}` }));
    const unknown = shares.some((share) => !known(share));
    const word = used > allowed ? `${units.format(used - allowed, data.unit, 3)} too much`
      : unknown ? 'not all known' : `${units.format(allowed - used, data.unit, 3)} left`;
    const edge = Math.max(Math.abs(end - centre), Math.abs(at(used) - centre));
    picture.append(
      svg('text', { x: end, y: top - 12, 'text-anchor': 'middle', class: 'ruler-figure' }, `${sign > 0 ? '+' : '\u2212'}${units.format(allowed, data.unit, 3)}`),
      svg('text', {
        x: centre + sign * (edge + 10), y: top + height / 2 + 4, 'text-anchor': sign > 0 ? 'start' : 'end',
        class: used > allowed ? 'ruler-word ruler-too-much' : 'ruler-word',
      }, word));
  }

  function drawScale(picture, data, geometry) {
    const { centre, scale, reachMinus, reachPlus } = geometry;
    const base = BAR.top + BAR.height + 8;
    const ticks = units.linearTicks(-reachMinus, reachPlus, 10);
    const common = units.commonPrefix(-reachMinus, reachPlus, data.unit);
    for (const { value } of ticks) {
      const x = centre + value * scale;
      picture.append(svg('path', { class: 'ruler-tick', d: `M${x} ${base}v5` }));
      const figure = units.format(Math.abs(value) / common.factor, '', 3, true);
      const signed = value === 0 ? '0' : (value > 0 ? '+' : '\u2212') + figure;
      picture.append(svg('text', { x, y: base + 17, 'text-anchor': 'middle', class: 'ruler-figure' }, value === 0 ? `0 ${common.unit}` : signed));
    }
    picture.append(svg('path', { class: 'ruler-tick', d: `M${centre - reachMinus * scale} ${base}H${centre + reachPlus * scale}` }));
    picture.append(svg('path', { class: 'ruler-centre', d: `M${centre} ${BAR.top - 8}V${base}` }));
    if (typeof data.nominal === 'number') {
      picture.append(svg('text', { x: centre, y: BAR.top - 12, 'text-anchor': 'middle', class: 'ruler-figure' }, units.format(data.nominal, data.unit, 4)));
    }
  }

  function cell(row, name, text, className) {
    const element = document.createElement(name);
    element.textContent = text;
    element.className = className || '';
    if (name === 'th') {
      element.scope = row.parentNode.nodeName === 'THEAD' ? 'col' : 'row';
    }
    row.append(element);
    return element;
  }

  // One column for a share of both sides: the load step below is the load release above.
  function columns(data) {
    const made = [];
    const identity = (share) => share.key || share.label;
    for (const [side, shares] of [['above', data.sharesPlus || []], ['below', data.sharesMinus || []]]) {
      shares.forEach((share, place) => {
        let column = made.find((one) => one.identity === identity(share));
        if (!column) {
          column = { identity: identity(share), tint: tint(share, place), labels: [] };
          made.push(column);
        }
        column[side] = share;
        if (!column.labels.includes(share.label)) {
          column.labels.push(share.label);
        }
      });
    }
    return made;
  }

  // The same shares in words, with their tints: the key to the bar and its numbers at once.
  function table({ data }) {
    const made = document.createElement('table');
    made.className = 'ruler-table';
    const head = made.createTHead().insertRow();
    cell(head, 'th', 'Side');
    const shares = columns(data);
    for (const column of shares) {
      const picture = svg('svg', { width: 14, height: 12, 'aria-hidden': 'true', class: 'ruler-swatch' });
      picture.append(svg('rect', { x: 0.5, y: 0.5, width: 13, height: 11, fill: column.tint, stroke: '#2b3238' }));
      cell(head, 'th', ' ' + column.labels.join(' / ')).prepend(picture);
    }
    cell(head, 'th', 'Sum');
    cell(head, 'th', 'Allowed');
    const body = made.createTBody();
    const figure = (share) => !share ? '' : known(share) ? units.format(share.value, data.unit, 3) : 'unknown';
    for (const [name, side, all, allowed] of [['Above', 'above', data.sharesPlus, data.allowedPlus], ['Below', 'below', data.sharesMinus, data.allowedMinus]]) {
      const row = body.insertRow();
      cell(row, 'th', name);
      shares.forEach((column) => cell(row, 'td', figure(column[side]), 'figure'));
      const sum = total(all || []);
      cell(row, 'td', units.format(sum, data.unit, 3), sum > allowed ? 'figure ruler-sum ruler-exceeded' : 'figure ruler-sum');
      cell(row, 'td', units.format(allowed, data.unit, 3), 'figure');
    }
    return made;
  }

  function spoken(data) {
    const side = (name, shares, allowed) => `${name}: ${units.format(total(shares), data.unit, 3)} of ${units.format(allowed, data.unit, 3)} used`;
    return data.summary || `${side('Above', data.sharesPlus || [], data.allowedPlus)}. ${side('Below', data.sharesMinus || [], data.allowedMinus)}.`;
  }

  function draw(ruler) {
    const { data, plot, figure } = ruler;
    if (!data || plot.clientWidth === 0) {
      return;
    }
    plot.replaceChildren();
    const width = Math.max(320, plot.clientWidth);
    const words = 124;
    const reachPlus = Math.max(data.allowedPlus, total(data.sharesPlus || [])) || 1e-9;
    const reachMinus = Math.max(data.allowedMinus, total(data.sharesMinus || [])) || 1e-9;
    const scale = (width - 2 * (SIDE + words)) / (reachPlus + reachMinus);
    const geometry = { scale, reachPlus, reachMinus, centre: SIDE + words + reachMinus * scale, id: `${figure.id}-over` };
    const height = BAR.top + BAR.height + 34;
    const picture = svg('svg', { class: 'ruler-picture', width, height, viewBox: `0 0 ${width} ${height}`, role: 'img' });
    picture.setAttribute('aria-label', spoken(data));
    const definitions = svg('defs');
    definitions.append(hatching(geometry.id));
    picture.append(definitions);
    plot.append(picture);
    drawSide(picture, data, geometry, -1);
    drawSide(picture, data, geometry, 1);
    drawScale(picture, data, geometry);
    plot.append(table(ruler));
  }

  function scan(again) {
    for (const figure of document.querySelectorAll('figure[data-ruler]')) {
      let ruler = rulers.get(figure.id);
      if (!ruler || ruler.figure !== figure) {
        ruler = { figure, plot: figure.querySelector(':scope > .ruler-plot'), text: null, data: null };
        rulers.set(figure.id, ruler);
        ruler.watcher = new ResizeObserver(() => draw(ruler));
        ruler.watcher.observe(ruler.plot);
      }
    }
    for (const [id, ruler] of rulers) {
      const text = charts.textOf(ruler.figure);
      if (!ruler.figure.isConnected) {
        ruler.watcher.disconnect();
        rulers.delete(id);
      } else if (text !== ruler.text || again) {
        ruler.text = text;
        try {
          ruler.data = text ? JSON.parse(text) : null;
        } catch (error) {
          ruler.data = null;
          ruler.plot.textContent = 'The numbers of this ruler could not be read.';
        }
        draw(ruler);
      }
    }
  }

  charts.join({ scan });
})();
