// Fields that count only with one choice of another field: <div data-when="control=VOLTAGE_MODE"> or "topology=BUCK|BOOST".
// The others are hidden, not emptied; one with a message stays in sight. Without a script all of them stand there.
(() => {
  'use strict';

  function show() {
    for (const part of document.querySelectorAll('[data-when]')) {
      const [name, values] = part.dataset.when.split('=');
      const choice = document.getElementById(name);
      part.hidden = choice !== null && !values.split('|').includes(choice.value) && part.querySelector('.wrong') === null;
    }
  }

  document.addEventListener('change', show);
  document.addEventListener('DOMContentLoaded', show);
})();
