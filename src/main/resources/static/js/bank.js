// The bank page: a remedy tried in place, and undone; cards that come and go.
(() => {
  'use strict';

  const undo = document.createElement('p');
  undo.className = 'notice';
  undo.setAttribute('role', 'status');

  function set(input, value) {
    input.value = value;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  }

  document.addEventListener('click', (event) => {
    const button = event.target.closest('button[data-branch]');
    const card = button && document.getElementById('card-' + button.dataset.branch);
    const input = card && card.querySelector('input[name$=".count"]');
    if (!input) {
      return;
    }
    if (button.classList.contains('step')) {
      set(input, button.dataset.count);
      return;
    }
    const before = input.value;
    undo.textContent = 'Tried: ' + before + ' → ' + button.dataset.count + ' in ' + card.querySelector('input[name$=".label"]').value
      + '. It is kept when you save. ';
    const back = document.createElement('button');
    back.type = 'button';
    back.className = 'quiet';
    back.textContent = 'Undo';
    back.addEventListener('click', () => {
      set(input, before);
      undo.remove();
    });
    undo.append(back);
    document.getElementById('problems').after(undo);
    set(input, button.dataset.count);
  });

  // The choice of the corner stands among the charts, outside of the form that it belongs to.
  document.addEventListener('change', (event) => {
    if (event.target.id === 'corner') {
      window.htmx.trigger(document.body, 'bank-changed');
    }
  });

  // The pictures follow at once; what is said of all corners follows them and is faint until then.
  document.addEventListener('bank-previewed', () => {
    for (const id of ['claim', 'verdicts', 'remedies', 'dynamics', 'stress', 'effects']) {
      document.getElementById(id).classList.add('overtaken');
    }
  });

  // Figures that are on their way for the cards as they were must not arrive among the new ones.
  document.addEventListener('htmx:beforeRequest', (event) => {
    if (event.detail.requestConfig.path === '/banks/cards') {
      window.htmx.trigger('#bank', 'htmx:abort');
    }
  });
})();
