// How many comments are tied to a verdict or a branch stands at its row or card, beside a link that begins another one.
(() => {
  'use strict';

  function put(tied, host) {
    if (host && !host.querySelector('.tied')) {
      const shown = tied.cloneNode(true);
      shown.hidden = false;
      host.append(' ', shown);
    }
  }

  function each(beginning, find) {
    for (const tied of document.querySelectorAll('#review > .tied[data-at^="' + beginning + '"]')) {
      put(tied, find(document.getElementById(tied.dataset.at)));
    }
  }

  function verdicts() {
    each('verdict-', (row) => row && row.lastElementChild);
  }

  document.addEventListener('DOMContentLoaded', () => {
    verdicts();
    // Only once: cards that were changed since are no longer the branches of the stored revision.
    each('card-', (card) => card);
  });

  // A preview brings the rows anew.
  document.addEventListener('htmx:oobAfterSwap', verdicts);

  document.addEventListener('click', (event) => {
    const link = event.target.closest('a[data-about]');
    if (link) {
      event.preventDefault();
      document.getElementById('commentAbout').value = link.dataset.about;
      document.getElementById('commentRemark').focus();
    }
  });
})();
