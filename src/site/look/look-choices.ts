const root = document.documentElement;

/** Shows the choices of colours and type, with what is kept, and keeps each change on the device. */
export function startLookChoices(form: HTMLFormElement): void {
  const show = () => {
    for (const input of form.querySelectorAll('input')) input.checked = input.value === (chosen(input.name) ?? '');
  };
  form.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const { name, value } = target;
    if (value) root.setAttribute(`data-${name}`, value);
    else root.removeAttribute(`data-${name}`);
    keep(name, value);
  });
  form.addEventListener('submit', (event) => event.preventDefault());
  // After "back", and after a change in another tab: apply-look.js has changed the page before.
  addEventListener('pageshow', show);
  addEventListener('storage', show);
  show();
  form.hidden = false;
  for (const notice of document.querySelectorAll<HTMLElement>('[data-look-without]')) notice.hidden = true;
}

const chosen = (name: string) => root.getAttribute(`data-${name}`);

function keep(name: string, value: string): void {
  try {
    if (value) localStorage.setItem(`fieldbook-${name}`, value);
    else localStorage.removeItem(`fieldbook-${name}`);
  } catch {
    // Storage is switched off: the choice holds for this page.
  }
}
