'use strict';
(() => {
  const root = document.documentElement;
  const slider = document.getElementById('slider');
  const stage = document.getElementById('stage');
  const positions = document.querySelectorAll('template');
  let shown = '';

  const say = () => slider.setAttribute('aria-valuetext', positions[slider.valueAsNumber].dataset[root.dataset.unit]);

  // The two sides of the chosen seam are marked on the pieces.
  const mark = () => {
    for (const button of stage.querySelectorAll('button[data-a]')) {
      const pressed = button.textContent === shown;
      button.setAttribute('aria-pressed', String(pressed));
      if (pressed) {
        for (const side of ['a', 'b']) {
          for (const edge of button.dataset[side].split(' ')) {
            const path = stage.querySelector('[data-edge="' + edge + '"]');
            if (path) path.classList.add('side-' + side);
          }
        }
      }
    }
  };

  const take = (id) => {
    const here = stage.querySelector('.' + id + '-here');
    document.getElementById(id).replaceChildren(...here.childNodes);
    here.remove();
  };

  const show = () => {
    stage.replaceChildren(positions[slider.valueAsNumber].content.cloneNode(true));
    take('amount');
    take('told');
    say();
    mark();
  };

  slider.addEventListener('input', show);
  for (const radio of document.querySelectorAll('input[name="unit"]')) {
    radio.addEventListener('change', () => {
      root.dataset.unit = radio.value;
      say();
    });
  }
  stage.addEventListener('click', (event) => {
    const button = event.target.closest('button[data-a]');
    if (!button) return;
    shown = button.textContent === shown ? '' : button.textContent;
    const focused = button.textContent;
    show();
    for (const other of stage.querySelectorAll('button[data-a]')) {
      if (other.textContent === focused) other.focus();
    }
  });
})();
