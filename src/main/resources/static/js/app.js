// Behaviour that every page shares: unsaved work, a lost session, confirmations.
(() => {
  'use strict';

  let unsaved = false;

  const guarded = () => document.querySelector('form[data-guard]');

  document.addEventListener('input', (event) => {
    if (event.target.closest('form[data-guard]')) {
      unsaved = true;
      document.body.classList.add('unsaved');
    }
  });

  document.addEventListener('submit', (event) => {
    const question = event.target.dataset.confirm;
    if (question && !window.confirm(question)) {
      event.preventDefault();
      return;
    }
    // Another form of the page, such as signing out, must not carry unsaved work away without a question.
    if (event.target.matches('form[data-guard]')) {
      unsaved = false;
    }
  });

  // A script's request that was answered with another page has stored what stood here.
  document.addEventListener('htmx:beforeOnLoad', (event) => {
    if (event.detail.xhr.getResponseHeader('HX-Redirect')) {
      unsaved = false;
    }
  });

  window.addEventListener('beforeunload', (event) => {
    if (unsaved && guarded()) {
      event.preventDefault();
    }
  });

  // A preview that meets an expired session must not lose what stands on the page: say so and leave it alone.
  document.addEventListener('htmx:responseError', (event) => {
    const status = event.detail.xhr.status;
    let banner = document.getElementById('lost');
    if (!banner) {
      banner = document.createElement('p');
      banner.id = 'lost';
      banner.className = 'problem';
      banner.setAttribute('role', 'alert');
      document.querySelector('main').prepend(banner);
    }
    const type = event.detail.xhr.getResponseHeader ? event.detail.xhr.getResponseHeader('Content-Type') || '' : '';
    banner.textContent = type.startsWith('text/plain') ? event.detail.xhr.responseText : status === 401 || status === 403
      ? 'You are signed out or may not do this. What you typed is still on this page: sign in again in another tab, then go on here.'
      : 'The server could not answer (' + status + '). What you typed is still on this page.';
  });
  document.addEventListener('htmx:sendError', () => {
    document.dispatchEvent(new CustomEvent('htmx:responseError', { detail: { xhr: { status: 'no connection' } } }));
  });
  document.addEventListener('htmx:beforeSwap', () => {
    const banner = document.getElementById('lost');
    if (banner) {
      banner.remove();
    }
  });
})();
