// Before the page is drawn, so that it does not change under the eye. As a file, since the pages allow no inline script.
(() => {
  const root = document.documentElement;
  const apply = () => {
    for (const name of ['look', 'type']) {
      let kept = null;
      try {
        kept = localStorage.getItem(`fieldbook-${name}`);
      } catch {
        // Storage is switched off: the page looks as the device says.
      }
      if (kept) root.setAttribute(`data-${name}`, kept);
      else root.removeAttribute(`data-${name}`);
    }
  };
  apply();
  addEventListener('pageshow', apply);
  addEventListener('storage', apply);
})();
