// Sets the theme before the first paint, so that the page does not flash.
(() => {
  let kept = null;
  try { kept = localStorage.getItem('clothwright.theme'); } catch { /* the store is closed to this page: follow the system */ }
  if (kept === 'light' || kept === 'dark') document.documentElement.dataset.theme = kept;
})();
