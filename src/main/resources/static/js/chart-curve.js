// A series as numbers: its points, the value between two of them, and the part that evidence covers.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};

  const finite = (value) => typeof value === 'number' && Number.isFinite(value);

  // What a log axis cannot carry becomes a gap, and is counted so that the page can say so.
  function points(series, shared, logX, logY) {
    const xs = series.x || shared || [];
    const ys = series.y || [];
    const result = [];
    let dropped = 0;
    for (let i = 0; i < Math.min(xs.length, ys.length); i++) {
      if (!finite(xs[i]) || (logX && xs[i] <= 0)) {
        continue;
      }
      const drawable = finite(ys[i]) && (!logY || ys[i] > 0);
      if (!drawable && finite(ys[i])) {
        dropped++;
      }
      result.push({ x: xs[i], y: drawable ? ys[i] : NaN, raw: finite(ys[i]) ? ys[i] : null });
    }
    return { points: result, dropped };
  }

  // Index of the last point at or before x, or -1.
  function before(list, x) {
    let low = 0;
    let high = list.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      if (list[middle].x <= x) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return high;
  }

  // Between points a curve is read as it is drawn: straight on the axes in use. Beyond its ends it has no value.
  function valueAt(list, x, logX, logY) {
    if (list.length === 0 || x < list[0].x || x > list[list.length - 1].x) {
      return null;
    }
    const i = Math.max(0, before(list, x));
    const left = list[i];
    if (left.x === x || i === list.length - 1) {
      return left.raw;
    }
    const right = list[i + 1];
    if (left.raw === null || right.raw === null) {
      return null;
    }
    const share = logX ? Math.log(x / left.x) / Math.log(right.x / left.x) : (x - left.x) / (right.x - left.x);
    if (logY && left.raw > 0 && right.raw > 0) {
      return left.raw * (right.raw / left.raw) ** share;
    }
    return left.raw + (right.raw - left.raw) * share;
  }

  function nearest(list, x, log) {
    const i = Math.max(0, before(list, x));
    if (i >= list.length - 1) {
      return Math.min(i, list.length - 1);
    }
    const middle = log ? Math.sqrt(list[i].x * list[i + 1].x) : (list[i].x + list[i + 1].x) / 2;
    return x < middle ? i : i + 1;
  }

  const isCovered = (series, x) =>
    !(finite(series.validFrom) && x < series.validFrom * (1 - 1e-9)) && !(finite(series.validTo) && x > series.validTo * (1 + 1e-9));

  // Runs of points inside and outside validFrom..validTo; neighbours share a point so that the line does not break.
  function pieces(series, list) {
    const result = [];
    for (const point of list) {
      const covered = isCovered(series, point.x);
      const current = result[result.length - 1];
      if (!current) {
        result.push({ covered, points: [point] });
      } else if (current.covered === covered) {
        current.points.push(point);
      } else if (covered) {
        current.points.push(point);
        result.push({ covered, points: [point] });
      } else {
        result.push({ covered, points: [current.points[current.points.length - 1], point] });
      }
    }
    return result;
  }

  Stillrail.curve = { points, before, valueAt, nearest, isCovered, pieces };
})();
