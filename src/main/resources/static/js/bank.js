// The bank page: buttons that try a change in a card, and undo it.
(() => {
  'use strict';

  document.addEventListener('click', (event) => {
    const button = event.target.closest('[data-set]');
    if (!button) {
      return;
    }
    const input = document.getElementById(button.dataset.set);
    if (input) {
      const before = input.value;
      input.value = button.dataset.value;
      button.dataset.value = before;
      button.textContent = button.dataset.tried === 'yes' ? button.dataset.words : 'undo';
      button.dataset.tried = button.dataset.tried === 'yes' ? 'no' : 'yes';
      input.dispatchEvent(new Event('input', { bubbles: true }));
    }
  });
})();
