// What lies on the paper besides curves: shaded bands, uncertainty, marked frequencies or times, limits' hatching,
// named points and the glyphs of technologies. A Chart.js plugin that reads everything from the chart's own view.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};
  const { style } = Stillrail;

  const INK = '#2b3238';
  const ROW = 13;

  function inPlot(chart, draw) {
    const { ctx, chartArea: area } = chart;
    ctx.save();
    ctx.beginPath();
    ctx.rect(area.left, area.top, area.right - area.left, area.bottom - area.top);
    ctx.clip();
    draw(ctx, area);
    ctx.restore();
  }

  function span(chart, from, to) {
    const { x } = chart.scales;
    const left = from === undefined || from === null || from <= x.min ? chart.chartArea.left : x.getPixelForValue(from);
    const right = to === undefined || to === null || to >= x.max ? chart.chartArea.right : x.getPixelForValue(to);
    const outside = (from > x.max) || (to < x.min);
    return outside || right <= left ? null : [left, right];
  }

  function hatch(ctx, left, top, right, bottom, gap) {
    ctx.save();
    ctx.beginPath();
    ctx.rect(left, top, right - left, bottom - top);
    ctx.clip();
    ctx.beginPath();
    const height = bottom - top;
    for (let x = left - height; x < right; x += gap) {
      ctx.moveTo(x, bottom);
      ctx.lineTo(x + height, top);
    }
    ctx.stroke();
    ctx.restore();
  }

  // The damping band is a flat tint, the quiet band a fine hatch: they stay apart without colour.
  function drawBands(chart, view) {
    inPlot(chart, (ctx, area) => {
      for (const band of view.data.bands || []) {
        const edges = span(chart, band.from, band.to);
        if (!edges) {
          continue;
        }
        const [left, right] = edges;
        if (band.kind === 'quiet') {
          ctx.fillStyle = 'rgba(0, 158, 115, 0.07)';
          ctx.fillRect(left, area.top, right - left, area.bottom - area.top);
          ctx.strokeStyle = 'rgba(0, 110, 80, 0.16)';
          ctx.lineWidth = 1;
          hatch(ctx, left, area.top, right, area.bottom, 11);
        } else if (band.kind === 'damping') {
          ctx.fillStyle = 'rgba(0, 114, 178, 0.12)';
          ctx.fillRect(left, area.top, right - left, area.bottom - area.top);
        } else {
          ctx.fillStyle = 'rgba(90, 90, 90, 0.10)';
          ctx.fillRect(left, area.top, right - left, area.bottom - area.top);
        }
      }
    });
  }

  // On one line, else a word a line, else not at all: half a name helps nobody.
  function fitted(ctx, text, room) {
    const fits = (line) => ctx.measureText(line).width <= room;
    return [[text], text.split(' ')].find((lines) => lines.every(fits)) || [];
  }

  function nameBands(chart, view) {
    inPlot(chart, (ctx, area) => {
      ctx.font = `italic 11px ${view.fontFamily}`;
      ctx.textBaseline = 'top';
      ctx.textAlign = 'center';
      for (const band of view.data.bands || []) {
        const edges = span(chart, band.from, band.to);
        const lines = edges && band.label ? fitted(ctx, band.label, edges[1] - edges[0] - 6) : [];
        lines.forEach((text, row) => {
          const middle = (edges[0] + edges[1]) / 2;
          const half = ctx.measureText(text).width / 2 + 3;
          ctx.fillStyle = 'rgba(255, 255, 255, 0.82)';
          ctx.fillRect(middle - half, area.top + 3 + row * ROW, 2 * half, ROW + 1);
          ctx.fillStyle = INK;
          ctx.fillText(text, middle, area.top + 5 + row * ROW);
        });
      }
    });
  }

  function drawUncertainty(chart, view) {
    inPlot(chart, (ctx) => {
      const { x, y } = chart.scales;
      for (const band of view.uncertain.filter(({ of }) => !of.hidden && !of.faint)) {
        ctx.fillStyle = 'rgba(110, 110, 110, 0.24)';
        ctx.beginPath();
        const edge = (values, from, to, by) => {
          for (let i = from; i !== to; i += by) {
            ctx.lineTo(x.getPixelForValue(band.x[i]), y.getPixelForValue(values[i]));
          }
        };
        edge(band.low, 0, band.x.length, 1);
        edge(band.high, band.x.length - 1, -1, -1);
        ctx.closePath();
        ctx.fill();
      }
    });
  }

  function drawFocus(chart, view) {
    const focus = view.focus;
    if (!focus || (focus.from === undefined && focus.to === undefined)) {
      return;
    }
    inPlot(chart, (ctx, area) => {
      const edges = span(chart, focus.from, focus.to);
      ctx.fillStyle = 'rgba(251, 250, 245, 0.78)';
      if (!edges) {
        return;
      }
      ctx.fillRect(area.left, area.top, edges[0] - area.left, area.bottom - area.top);
      ctx.fillRect(edges[1], area.top, area.right - edges[1], area.bottom - area.top);
    });
  }

  // Names of marks stand above the frame, in two rows where they would touch. The frame's edges are fixed by the margins,
  // so this also tells the height that they need before anything is laid out.
  function place(view, ctx, left, right, width) {
    const { data, group, logX } = view;
    const [low, high] = group.shown;
    const share = (value) => logX ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    const ends = [-Infinity, -Infinity];
    ctx.save();
    ctx.font = `11px ${view.fontFamily}`;
    const placed = (data.marks || []).filter((mark) => mark.at >= low && mark.at <= high).sort((a, b) => a.at - b.at).map((mark) => {
      const at = left + share(mark.at) * (right - left);
      const text = mark.label || '';
      const length = ctx.measureText(text).width;
      const start = Math.max(left, Math.min(at - length / 2, width - length - 2));
      const row = start > ends[0] ? 0 : start > ends[1] ? 1 : ends[0] <= ends[1] ? 0 : 1;
      ends[row] = start + length + 8;
      return { at: Math.round(at) + 0.5, text, start, row };
    });
    ctx.restore();
    return placed;
  }

  function drawMarks(chart, view) {
    const { ctx, chartArea: area } = chart;
    ctx.save();
    ctx.font = `11px ${view.fontFamily}`;
    ctx.lineWidth = 1.2;
    ctx.textBaseline = 'bottom';
    ctx.textAlign = 'left';
    ctx.strokeStyle = '#5c646b';
    ctx.fillStyle = INK;
    ctx.setLineDash([2, 2]);
    for (const { at, text, start, row } of place(view, ctx, area.left, area.right, chart.width)) {
      const top = area.top - 4 - row * ROW;
      ctx.beginPath();
      ctx.moveTo(at, top);
      ctx.lineTo(at, area.bottom);
      ctx.stroke();
      ctx.fillText(text, start, top);
    }
    ctx.restore();
  }

  // Ticks on the forbidden side of a limit, as on a drawing.
  function hatchLimits(chart, view) {
    inPlot(chart, (ctx, area) => {
      const { x, y } = chart.scales;
      for (const shown of view.shown) {
        const { series } = shown;
        if (series.role !== 'limit' || shown.hidden) {
          continue;
        }
        ctx.strokeStyle = style.faded(style.colour(series), shown.faint ? 0.25 : 0.9);
        ctx.lineWidth = 1;
        ctx.beginPath();
        const away = series.side === 'below' ? 1 : -1;
        let last = null;
        let carried = 0;
        for (const point of shown.points) {
          const here = Number.isFinite(point.y) ? [x.getPixelForValue(point.x), y.getPixelForValue(point.y)] : null;
          if (here && last) {
            const length = Math.hypot(here[0] - last[0], here[1] - last[1]);
            for (let along = 9 - carried; along <= length; along += 9) {
              const px = last[0] + (here[0] - last[0]) * along / length;
              const py = last[1] + (here[1] - last[1]) * along / length;
              if (px >= area.left - 9 && px <= area.right + 9) {
                ctx.moveTo(px, py);
                ctx.lineTo(px + 5, py + 6 * away);
              }
            }
            carried = (carried + length) % 9;
          }
          last = here;
        }
        ctx.stroke();
      }
    });
  }

  function drawGlyphs(chart, view) {
    inPlot(chart, (ctx, area) => {
      const { x, y } = chart.scales;
      view.shown.forEach((shown, index) => {
        const name = style.glyph(shown.series);
        if (name === 'none' || shown.hidden) {
          return;
        }
        const line = shown.faint ? style.faded(style.colour(shown.series), 0.25) : style.colour(shown.series);
        for (let px = area.left + 24 + (index * 37) % 148; px < area.right; px += 148) {
          const value = view.valueAt(shown, x.getValueForPixel(px));
          if (value !== null) {
            style.drawGlyph(ctx, name, px, y.getPixelForValue(value), 3.4, line);
          }
        }
      });
    });
  }

  function drawPoints(chart, view) {
    inPlot(chart, (ctx, area) => {
      const { x, y } = chart.scales;
      ctx.font = `11px ${view.fontFamily}`;
      for (const point of view.data.points || []) {
        const px = x.getPixelForValue(point.x);
        const py = y.getPixelForValue(point.y);
        if (px < area.left || px > area.right || !Number.isFinite(py)) {
          continue;
        }
        ctx.strokeStyle = INK;
        ctx.lineWidth = 1.4;
        ctx.beginPath();
        ctx.arc(px, py, 5.5, 0, 2 * Math.PI);
        ctx.stroke();
        const width = ctx.measureText(point.label || '').width;
        const left = px + 9 + width > area.right ? px - 9 - width : px + 9;
        const base = py < area.top + 24 ? py + 14 : py - 6;
        ctx.fillStyle = 'rgba(255, 255, 255, 0.82)';
        ctx.fillRect(left - 2, base - 10, width + 4, 13);
        ctx.fillStyle = INK;
        ctx.textBaseline = 'alphabetic';
        ctx.fillText(point.label || '', left, base);
      }
    });
  }

  function drawFrame(chart) {
    const { ctx, chartArea: area } = chart;
    ctx.save();
    ctx.strokeStyle = '#8b8f93';
    ctx.lineWidth = 1;
    ctx.strokeRect(area.left + 0.5, area.top + 0.5, area.right - area.left - 1, area.bottom - area.top - 1);
    ctx.restore();
  }

  Stillrail.marks = {
    id: 'stillrailMarks',
    place,
    beforeDraw(chart) {
      if (!chart.stillrail) {
        return;
      }
      const { ctx, chartArea: area } = chart;
      ctx.save();
      ctx.fillStyle = '#ffffff';
      ctx.fillRect(area.left, area.top, area.right - area.left, area.bottom - area.top);
      ctx.restore();
      drawBands(chart, chart.stillrail);
    },
    beforeDatasetsDraw(chart) {
      if (chart.stillrail) {
        drawUncertainty(chart, chart.stillrail);
        drawMarks(chart, chart.stillrail);
      }
    },
    afterDatasetsDraw(chart) {
      if (chart.stillrail) {
        hatchLimits(chart, chart.stillrail);
        drawGlyphs(chart, chart.stillrail);
        drawFocus(chart, chart.stillrail);
        nameBands(chart, chart.stillrail);
        drawPoints(chart, chart.stillrail);
        drawFrame(chart);
      }
    },
  };
})();
