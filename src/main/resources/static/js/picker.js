// A field in which parts are looked up by typing: arrows move through the matches, Enter takes one, Escape closes the list and, once
// more, brings back the part that stands there. A field marked data-many holds several numbers with commas between; there the piece
// at the caret is looked up. A field with no hidden one beside it sends the number itself and may be left empty.
(() => {
  'use strict';

  const WAIT_MS = 150;
  let waiting = 0;
  // What the form has been told of each field; what the server wrote into it, until somebody types.
  const told = new WeakMap();

  const isPicker = (element) => element instanceof Element && element.matches('.picker [role="combobox"]');
  const within = (input, selector) => input.closest('.picker').querySelector(selector);
  const matches = (input) => within(input, '.matches');
  const options = (input) => [...matches(input).querySelectorAll('[role="option"]')];
  const usable = (input) => options(input).filter((option) => option.getAttribute('aria-disabled') !== 'true');
  const marked = (input) => within(input, '[aria-selected="true"]');
  const isOpen = (input) => !matches(input).hidden;
  const isMany = (input) => 'many' in input.dataset;
  const numberOf = (option) => option.querySelector('strong').textContent;

  // Where in the field the number stands that is being typed.
  function piece(input) {
    if (!isMany(input)) {
      return [0, input.value.length];
    }
    const caret = input.selectionEnd;
    return [input.value.slice(0, caret).search(/[^,;]*$/), caret + input.value.slice(caret).search(/[,;]|$/)];
  }

  // What stands in a field until it is typed over is the chosen part, not a question.
  function question(input) {
    const text = input.value.slice(...piece(input)).trim();
    return !isMany(input) && text === input.dataset.chosen ? '' : text;
  }

  function exact(input) {
    const text = question(input).toLowerCase();
    return text && usable(input).find((option) => numberOf(option).toLowerCase() === text);
  }

  function open(input) {
    matches(input).hidden = false;
    input.setAttribute('aria-expanded', 'true');
  }

  function close(input) {
    window.clearTimeout(waiting);
    waiting = 0;
    matches(input).hidden = true;
    input.setAttribute('aria-expanded', 'false');
    input.removeAttribute('aria-activedescendant');
  }

  function mark(input, option) {
    options(input).forEach((each) => each.setAttribute('aria-selected', String(each === option)));
    if (option) {
      input.setAttribute('aria-activedescendant', option.id);
      option.scrollIntoView({ block: 'nearest' });
    } else {
      input.removeAttribute('aria-activedescendant');
    }
  }

  function move(input, step) {
    const found = usable(input);
    const from = found.indexOf(marked(input));
    mark(input, found[from < 0 ? (step > 0 ? 0 : found.length - 1) : (from + step + found.length) % found.length]);
  }

  async function ask(input) {
    window.clearTimeout(waiting);
    waiting = 0;
    const list = matches(input);
    const text = question(input);
    const address = new URLSearchParams({ text: text, purpose: input.dataset.purpose || 'PART' });
    await window.htmx.ajax('GET', '/banks/parts?' + address, { target: list, swap: 'innerHTML', source: list });
    // An answer that a newer question has overtaken, or that comes after the field was left, is not shown.
    if (document.activeElement !== input || text !== question(input) || !list.firstElementChild) {
      return;
    }
    list.querySelector('[role="listbox"]').id = input.getAttribute('aria-controls');
    options(input).forEach((option, index) => {
      option.id = list.id + '-' + index;
    });
    open(input);
    // Typed figures are never what somebody meant who searched for a part.
    mark(input, text ? usable(input).find((option) => option.dataset.id !== 'inline') : null);
    const notes = [...list.querySelectorAll('p')].map((note) => note.textContent);
    within(input, '[role="status"]').textContent = [usable(input).length === 1 ? 'One choice.' : usable(input).length + ' choices.', ...notes].join(' ');
  }

  // The words of a search are no figures of the bank: its form hears of the field when a part is taken or the field is left.
  function tell(input) {
    if (input.value !== (told.has(input) ? told.get(input) : input.defaultValue)) {
      told.set(input, input.value);
      input.form.dispatchEvent(new Event('input', { bubbles: true }));
    }
  }

  function take(input, option) {
    const number = numberOf(option);
    close(input);
    if (isMany(input)) {
      const [from, to] = piece(input);
      const before = input.value.slice(0, from) + (from > 0 ? ' ' : '') + number;
      input.value = before + input.value.slice(to);
      input.setSelectionRange(before.length, before.length);
      tell(input);
      return;
    }
    input.value = number;
    const field = within(input, 'input[type="hidden"]');
    if (!field) {
      tell(input);
      return;
    }
    input.dataset.chosen = number;
    told.set(input, number);
    field.value = option.dataset.id;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    field.dispatchEvent(new Event('change', { bubbles: true }));
  }

  // Somebody who types faster than the list comes need not wait for it: a whole number is taken all the same.
  async function settle(input) {
    const typed = waiting !== 0;
    if (typed) {
      await ask(input);
    }
    const option = exact(input);
    if (option) {
      take(input, option);
    }
    return Boolean(option);
  }

  async function leave(input) {
    matches(input).hidden = true;
    if (!isMany(input) && input.value.trim() === '') {
      input.value = input.dataset.chosen;
    }
    const taken = !isMany(input) && question(input) && await settle(input);
    if (input.isConnected && document.activeElement !== input) {
      close(input);
      if (!taken) {
        tell(input);
      }
    }
  }

  document.addEventListener('input', (event) => {
    if (isPicker(event.target)) {
      event.stopPropagation();
      window.clearTimeout(waiting);
      waiting = window.setTimeout(() => ask(event.target), WAIT_MS);
    }
  }, true);
  document.addEventListener('change', (event) => {
    if (isPicker(event.target)) {
      event.stopPropagation();
    }
  }, true);

  document.addEventListener('keydown', (event) => {
    const input = event.target;
    if (!isPicker(input)) {
      return;
    }
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      if (isOpen(input)) {
        move(input, event.key === 'ArrowDown' ? 1 : -1);
      } else {
        ask(input);
      }
    } else if (event.key === 'Enter') {
      // Enter in a search never saves the bank.
      event.preventDefault();
      if (waiting) {
        settle(input);
      } else if (isOpen(input) && marked(input)) {
        take(input, marked(input));
      }
    } else if (event.key === 'Escape' && isOpen(input)) {
      event.preventDefault();
      close(input);
    } else if (event.key === 'Escape' && !isMany(input)) {
      window.clearTimeout(waiting);
      input.value = input.dataset.chosen;
      tell(input);
    }
  });

  // Pressing on a match must not take the focus away from the field before the click arrives.
  document.addEventListener('mousedown', (event) => {
    if (event.target.closest('.picker .matches')) {
      event.preventDefault();
    }
  });
  document.addEventListener('click', (event) => {
    const option = event.target.closest('.picker [role="option"]');
    if (option && option.getAttribute('aria-disabled') !== 'true') {
      take(option.closest('.picker').querySelector('[role="combobox"]'), option);
    } else if (isPicker(event.target) && !isOpen(event.target) && !isMany(event.target)) {
      event.target.select();
      ask(event.target);
    }
  });
  document.addEventListener('focusout', (event) => {
    if (isPicker(event.target)) {
      leave(event.target);
    }
  });
})();
