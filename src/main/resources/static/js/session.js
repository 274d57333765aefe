// A form is sent only when the session is alive. Otherwise the page stays as it is: the person signs in again in another tab
// and presses the button once more, and the form goes out with the token of the new session.
(() => {
  'use strict';

  const say = (text) => {
    let banner = document.getElementById('lost');
    if (!banner) {
      banner = document.createElement('p');
      banner.id = 'lost';
      banner.className = 'problem';
      banner.setAttribute('role', 'alert');
      document.querySelector('main').prepend(banner);
    }
    banner.textContent = text;
    banner.scrollIntoView({ block: 'nearest' });
  };

  const takeOver = ({ headerName, parameterName, token }) => {
    const meta = document.querySelector('meta[name=csrf]');
    if (meta) {
      meta.content = token;
      meta.dataset.header = headerName;
    }
    if (document.body.hasAttribute('hx-headers')) {
      document.body.setAttribute('hx-headers', JSON.stringify({ [headerName]: token }));
    }
    for (const input of document.querySelectorAll('input[type=hidden]')) {
      if (input.name === parameterName) {
        input.value = token;
      }
    }
  };

  // Resolves to null when the form may go, or to a sentence that says why not.
  const obstacle = async () => {
    let answer;
    try {
      answer = await fetch('/form-token', { headers: { Accept: 'application/json' }, redirect: 'error' });
    } catch {
      return 'The server does not answer. Nothing was sent; what you typed is still on this page.';
    }
    if (answer.status === 401) {
      return 'You are signed out. What you typed is still on this page: sign in again in another tab, then press the button once more.';
    }
    if (!answer.ok) {
      return 'The server could not answer (' + answer.status + '). Nothing was sent; what you typed is still on this page.';
    }
    takeOver(await answer.json());
    return null;
  };

  // A form sent by script leaves out the button that was pressed.
  const keepButton = (form, button) => {
    if (!button) {
      return;
    }
    if (button.name) {
      const field = document.createElement('input');
      field.type = 'hidden';
      field.name = button.name;
      field.value = button.value;
      form.append(field);
    }
    if (button.hasAttribute('formaction')) {
      form.setAttribute('action', button.getAttribute('formaction'));
    }
  };

  const signedIn = () => document.querySelector('.who') !== null;

  document.addEventListener('submit', async (event) => {
    const form = event.target;
    if (event.defaultPrevented || (form.getAttribute('method') || '').toLowerCase() !== 'post' || !signedIn()) {
      return;
    }
    event.preventDefault();
    if (form.dataset.sending) {
      return;
    }
    form.dataset.sending = 'yes';
    const reason = await obstacle();
    delete form.dataset.sending;
    if (reason) {
      say(reason);
      // The shared script counts a sent form as saved; this one was not.
      form.dispatchEvent(new Event('input', { bubbles: true }));
      return;
    }
    keepButton(form, event.submitter);
    HTMLFormElement.prototype.submit.call(form);
  });

  // Back from another tab: previews that were refused may go on.
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden && signedIn() && document.getElementById('lost')) {
      obstacle();
    }
  });
})();
