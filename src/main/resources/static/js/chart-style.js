// How a curve looks: colour by branch (Okabe and Ito's published set), rhythm and glyph by technology, line by evidence.
// Colour is never the only sign, so that a grey print still reads:
//   measured solid, datasheet dashed in the rhythm of its technology, extrapolated dotted;
//   every few centimetres a curve carries the open glyph of its technology.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};

  const INK = '#000000';
  // Yellow is left out: too faint for a line on paper. Vermillion comes last because limits wear it.
  const SLOTS = ['#0072B2', '#E69F00', '#009E73', '#CC79A7', '#56B4E9', '#D55E00'];
  const GREYS = ['#333333', '#777777', '#555555', '#8c8c8c', '#666666', '#444444'];
  const LIMIT = '#D55E00';
  const FAINT = '#7d8288';

  const DOTTED = [1.5, 3.5];
  const TECHNOLOGIES = {
    'wet-aluminium': { rhythm: [13, 4], glyph: 'circle', texture: 'waves' },
    'polymer-aluminium': { rhythm: [13, 3, 3, 3], glyph: 'square', texture: 'rising' },
    'hybrid': { rhythm: [13, 3, 3, 3, 3, 3], glyph: 'diamond', texture: 'crossed' },
    'tantalum-mno2': { rhythm: [8, 4], glyph: 'up', texture: 'falling' },
    'tantalum-polymer': { rhythm: [8, 3, 2, 3], glyph: 'down', texture: 'chevrons' },
    'ceramic-1': { rhythm: [8, 2.5], glyph: 'plus', texture: 'rings' },
    'ceramic-2': { rhythm: [5, 4], glyph: 'cross', texture: 'dots' },
    'film': { rhythm: [18, 4], glyph: 'hourglass', texture: 'uprights' },
    'double-layer': { rhythm: [18, 3, 3, 3, 3, 3, 3, 3], glyph: 'bar', texture: 'bricks' },
  };
  const OTHER = { rhythm: [7, 4], glyph: 'none', texture: 'plain' };

  let grey = false;
  const slots = new Map();

  // Accepts an enum constant, a slug or a phrase: CERAMIC_CLASS_2, ceramic-2, 'ceramic class 2'.
  function technology(name) {
    const slug = String(name || '').toLowerCase().replace(/[\s_]+/g, '-').replace('-class-', '-');
    const turned = slug.split('-').reverse().join('-');
    return TECHNOLOGIES[slug] || TECHNOLOGIES[turned] || OTHER;
  }

  // A branch keeps its colour while it is on the page, whatever is added or taken away beside it. A new one takes a colour
  // that is free in the pictures it appears in, and if possible on the whole page. Takes the keys of each picture.
  function assign(pictures) {
    const keys = new Set(pictures.flat());
    for (const key of [...slots.keys()]) {
      if (!keys.has(key)) {
        slots.delete(key);
      }
    }
    for (const key of keys) {
      if (!slots.has(key)) {
        const beside = new Set(pictures.filter((picture) => picture.includes(key)).flat());
        const burden = SLOTS.map((unused, slot) => [...slots].filter(([, taken]) => taken === slot)
          .reduce((sum, [other]) => sum + (beside.has(other) ? 100 : 1), 0));
        slots.set(key, burden.indexOf(Math.min(...burden)));
      }
    }
  }

  function colour(series) {
    switch (series.role) {
      case 'bank': return INK;
      case 'reference': return FAINT;
      case 'limit': return grey ? INK : LIMIT;
      default: return (grey ? GREYS : SLOTS)[slots.get(series.key) || 0];
    }
  }

  function faded(hex, alpha) {
    const channel = (at) => parseInt(hex.slice(at, at + 2), 16);
    return `rgba(${channel(1)}, ${channel(3)}, ${channel(5)}, ${alpha})`;
  }

  function width(series) {
    return { bank: 3.2, limit: 1.4, reference: 1.4 }[series.role] || 1.8;
  }

  function dash(series, extrapolated) {
    if (extrapolated || series.kind === 'extrapolated') {
      return DOTTED;
    }
    if (series.role === 'limit') {
      return [];
    }
    const soft = series.kind ? !['measured', 'fitted', 'exact'].includes(series.kind) : series.role === 'branch';
    return soft ? technology(series.technology).rhythm : [];
  }

  function glyph(series) {
    return ['bank', 'limit', 'reference'].includes(series.role) || !series.technology
      ? 'none' : technology(series.technology).glyph;
  }

  const GLYPHS = {
    circle: [[0, 0, 1]],
    square: [[-1, -1], [1, -1], [1, 1], [-1, 1], [-1, -1]],
    diamond: [[0, -1.3], [1.3, 0], [0, 1.3], [-1.3, 0], [0, -1.3]],
    up: [[0, -1.2], [1.2, 1], [-1.2, 1], [0, -1.2]],
    down: [[0, 1.2], [1.2, -1], [-1.2, -1], [0, 1.2]],
    plus: [[-1.3, 0], [1.3, 0], null, [0, -1.3], [0, 1.3]],
    cross: [[-1, -1], [1, 1], null, [-1, 1], [1, -1]],
    hourglass: [[-1, -1.2], [1, -1.2], [-1, 1.2], [1, 1.2], [-1, -1.2]],
    bar: [[-0.5, -1.4], [0.5, -1.4], [0.5, 1.4], [-0.5, 1.4], [-0.5, -1.4]],
  };

  function drawGlyph(context, name, x, y, size, line) {
    const shape = GLYPHS[name];
    if (!shape) {
      return;
    }
    context.save();
    context.setLineDash([]);
    context.lineWidth = 1.5;
    context.strokeStyle = line;
    context.fillStyle = '#ffffff';
    context.beginPath();
    if (name === 'circle') {
      context.arc(x, y, size * 1.1, 0, 2 * Math.PI);
    } else {
      let lifted = true;
      for (const point of shape) {
        if (point === null) {
          lifted = true;
          continue;
        }
        context[lifted ? 'moveTo' : 'lineTo'](x + point[0] * size, y + point[1] * size);
        lifted = false;
      }
    }
    if (name !== 'plus' && name !== 'cross') {
      context.fill();
    }
    context.stroke();
    context.restore();
  }

  function glyphPath(name, x, y, size) {
    if (name === 'circle') {
      const r = size * 1.1;
      return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
    }
    let lifted = true;
    return (GLYPHS[name] || []).map((point) => {
      if (point === null) {
        lifted = true;
        return '';
      }
      const text = (lifted ? 'M' : 'L') + (x + point[0] * size) + ' ' + (y + point[1] * size);
      lifted = false;
      return text;
    }).join('');
  }

  const SVG = 'http://www.w3.org/2000/svg';

  function svg(name, attributes = {}, text) {
    const element = document.createElementNS(SVG, name);
    for (const [attribute, value] of Object.entries(attributes)) {
      element.setAttribute(attribute, value);
    }
    if (text !== undefined) {
      element.textContent = text;
    }
    return element;
  }

  // The short piece of line that stands beside a name in labels and tables.
  function sample(series, length = 34) {
    const picture = svg('svg', { class: 'chart-sample', width: length, height: 12, viewBox: `0 0 ${length} 12`, 'aria-hidden': 'true' });
    picture.append(svg('line', {
      x1: 1, x2: length - 1, y1: 6, y2: 6, stroke: colour(series), 'stroke-width': width(series),
      'stroke-dasharray': dash(series).join(' '),
    }));
    if (series.role === 'limit') {
      for (let x = 4; x < length; x += 7) {
        picture.append(svg('line', { x1: x, y1: 6, x2: x + 4, y2: series.side === 'below' ? 11 : 1, stroke: colour(series), 'stroke-width': 1 }));
      }
    }
    const name = glyph(series);
    if (name !== 'none') {
      picture.append(svg('path', {
        d: glyphPath(name, length / 2, 6, 3.2), stroke: colour(series), 'stroke-width': 1.5,
        fill: name === 'plus' || name === 'cross' ? 'none' : '#ffffff',
      }));
    }
    return picture;
  }

  // Each technology's weave, drawn in the branch's colour on a pale ground of it.
  const TEXTURES = {
    plain: { w: 8, h: 8, d: '' },
    waves: { w: 16, h: 8, d: 'M0 4q4 -4 8 0t8 0' },
    rising: { w: 8, h: 8, d: 'M-2 10L10 -2M-2 2L2 -2M6 10L10 6' },
    falling: { w: 8, h: 8, d: 'M-2 -2L10 10M6 -2L10 2M-2 6L2 10' },
    crossed: { w: 10, h: 10, d: 'M0 0L10 10M10 0L0 10' },
    chevrons: { w: 10, h: 8, d: 'M0 6L5 2L10 6' },
    dots: { w: 7, h: 7, d: 'M2 2h1.6v1.6h-1.6zM5.5 5.5h1.6v1.6h-1.6z' },
    rings: { w: 10, h: 10, d: 'M2.5 5a2.5 2.5 0 1 0 5 0a2.5 2.5 0 1 0 -5 0' },
    uprights: { w: 5, h: 8, d: 'M2.5 0V8' },
    bricks: { w: 14, h: 8, d: 'M0 0H14M0 4H14M3.5 0V4M10.5 4V8' },
  };

  function texture(id, series) {
    const weave = TEXTURES[technology(series.technology).texture];
    const line = colour(series);
    const pattern = svg('pattern', { id, width: weave.w, height: weave.h, patternUnits: 'userSpaceOnUse' });
    pattern.append(svg('rect', { width: weave.w, height: weave.h, fill: '#ffffff' }));
    pattern.append(svg('rect', { width: weave.w, height: weave.h, fill: line, 'fill-opacity': 0.22 }));
    if (weave.d) {
      pattern.append(svg('path', { d: weave.d, stroke: line, 'stroke-width': 1.4, fill: 'none' }));
    }
    return pattern;
  }

  Stillrail.style = {
    assign, colour, faded, width, dash, glyph, drawGlyph, sample, texture, svg,
    greyed(on) {
      grey = on;
    },
  };
})();
