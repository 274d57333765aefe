// Engineering notation and the ticks of logarithmic and linear axes.
(() => {
  'use strict';

  const Stillrail = window.Stillrail = window.Stillrail || {};

  const SPACE = '\u00a0';
  const PREFIXES = { '-15': 'f', '-12': 'p', '-9': 'n', '-6': 'µ', '-3': 'm', 0: '', 3: 'k', 6: 'M', 9: 'G', 12: 'T' };
  // An angle, a ratio or a level takes no prefix: nobody reads 'millidegrees'.
  const PLAIN = new Set(['', '°', '°C', '%', 'dB', 'K', '1', 'h', 'years']);

  const takesPrefix = (unit) => !PLAIN.has(unit || '');
  const minus = (text) => text.replace('-', '\u2212');
  const significant = (value, digits) => Number(value.toPrecision(digits));

  function exponentOf(value) {
    const exponent = 3 * Math.floor(Math.log10(Math.abs(value)) / 3 + 1e-12);
    return Math.max(-15, Math.min(12, exponent));
  }

  // Keeps trailing zeros, so a column of read-outs shows its resolution; 'short' drops them, for ticks.
  function format(value, unit = '', digits = 4, short = false) {
    if (value === null || value === undefined || !Number.isFinite(value)) {
      return '–';
    }
    const tail = unit && unit !== '1' ? (unit === '°' ? unit : SPACE + unit) : '';
    if (value === 0) {
      return '0' + tail;
    }
    if (!takesPrefix(unit)) {
      const plain = significant(value, digits);
      return minus(short || Math.abs(plain) >= 10 ** (digits - 1) || Math.abs(plain) < 1e-4
        ? String(plain) : plain.toPrecision(digits)) + tail;
    }
    const exponent = exponentOf(significant(value, digits));
    const mantissa = significant(value / 10 ** exponent, digits);
    const text = short || Math.abs(mantissa) >= 10 ** (digits - 1) ? String(mantissa) : mantissa.toPrecision(digits);
    return minus(text) + SPACE + PREFIXES[exponent] + (unit || '');
  }

  // One prefix for a whole linear axis, so that its ticks are bare numbers.
  function commonPrefix(low, high, unit) {
    const largest = Math.max(Math.abs(low), Math.abs(high));
    if (!takesPrefix(unit) || largest === 0 || !Number.isFinite(largest)) {
      return { factor: 1, unit: unit || '' };
    }
    // 1.2 V reads better than 1200 mV, but 900 mV better than 0.9 V.
    const exponent = exponentOf(largest);
    return { factor: 10 ** exponent, unit: PREFIXES[exponent] + unit };
  }

  function niceStep(span, count) {
    const raw = span / count;
    const decade = 10 ** Math.floor(Math.log10(raw));
    return decade * [1, 2, 2.5, 5, 10].find((factor) => factor * decade >= raw * 0.999);
  }

  // Fewer than three numbers give no scale: then the steps are halved.
  function linearTicks(low, high, count = 6, step = 0) {
    let width = step || niceStep(high - low, count);
    if (!step && Math.floor(high / width + 1e-9) - Math.ceil(low / width - 1e-9) < 2) {
      width /= 2;
    }
    const ticks = [];
    for (let i = Math.ceil(low / width - 1e-9); i * width <= high + 1e-9 * width; i++) {
      ticks.push({ value: Number((i * width).toPrecision(12)), major: true, labelled: true });
    }
    return ticks;
  }

  // Decades are the ruled lines, 2 to 9 the faint ones; the narrower the view, the more of them carry a label.
  function logTicks(low, high, length = 600) {
    const decades = Math.log10(high / low);
    if (decades < 0.35) {
      return linearTicks(low, high, 5);
    }
    const perDecade = length / decades;
    const labelled = perDecade > 420 ? [1, 2, 3, 4, 5, 6, 7, 8, 9] : perDecade > 190 ? [1, 2, 5] : [1];
    const every = Math.max(1, Math.ceil(26 / perDecade));
    const ticks = [];
    for (let exponent = Math.floor(Math.log10(low)); exponent <= Math.ceil(Math.log10(high)); exponent++) {
      for (let digit = 1; digit <= 9; digit++) {
        const value = Number(digit + 'e' + exponent);
        if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9) && (digit === 1 || perDecade > 40)) {
          ticks.push({
            value, major: digit === 1,
            labelled: labelled.includes(digit) && (digit !== 1 || exponent % every === 0),
          });
        }
      }
    }
    return ticks;
  }

  // Outward to the next 1, 2 or 5, so that a curve never sits on the frame and no decade stays empty.
  function logBounds(low, high) {
    const outward = (value, up) => {
      const decade = 10 ** Math.floor(Math.log10(value) + (up ? -1e-9 : 1e-9));
      const steps = up ? [1, 2, 5, 10] : [5, 2, 1];
      return Number((decade * steps.find((step) => up
        ? step * decade >= value * 1.04 : step * decade <= value / 1.04) || decade * (up ? 20 : 0.5)).toPrecision(3));
    };
    return [outward(low, false), outward(high, true)];
  }

  function linearBounds(low, high) {
    if (low === high) {
      const pad = Math.abs(low) * 0.1 || 1;
      return [low - pad, high + pad];
    }
    const pad = (high - low) * 0.06;
    const step = niceStep(high - low, 10);
    const floor = low >= 0 && low - pad < 0 ? 0 : Math.floor((low - pad) / step) * step;
    return [floor, Math.ceil((high + pad) / step) * step];
  }

  Stillrail.units = { format, takesPrefix, commonPrefix, linearTicks, logTicks, logBounds, linearBounds };
})();
