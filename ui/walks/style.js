/** Style sheets of the later walks, fetched when a walk is opened. */

/**
 * Adds a style sheet to the page, once.
 * @param {string} name its file, seen from `from`
 * @param {string} from `import.meta.url` of the module that needs it
 * @returns {Promise<void>} when it holds, so that nothing is drawn without it
 */
export function useStyle(name, from) {
  const href = new URL(name, from).href;
  const known = [...document.styleSheets].some((sheet) => sheet.href === href);
  if (known) {
    return Promise.resolve();
  }
  return new Promise((resolve) => {
    const sheet = document.createElement("link");
    sheet.rel = "stylesheet";
    sheet.href = href;
    sheet.onload = sheet.onerror = () => resolve();
    document.head.append(sheet);
  });
}
