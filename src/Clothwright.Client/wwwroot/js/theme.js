// Sets theme and language before the first paint, so that the page does not flash.
(() => {
  let theme = null, language = null;
  try {
    theme = localStorage.getItem('clothwright.theme');
    language = localStorage.getItem('clothwright.language');
  } catch { /* the store is closed to this page: follow the system */ }
  const page = document.documentElement;
  if (theme === 'light' || theme === 'dark') page.dataset.theme = theme;
  if (language && /^[a-z]{2}$/.test(language)) page.dataset.language = page.lang = language;
})();
