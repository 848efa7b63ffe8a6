const SYMBOL = /<symbol\b[^>]*\sid="(icon-[^"]+)"[^>]*>.*?<\/symbol>/gs;
const USE = /<use href="[^"#]*assets\/icons\.svg#(icon-[^"]+)"/g;

/**
 * Moves the icons that a page uses into the page. Browsers refuse to take them from another file where the site is read from a
 * disk, and complain about every one.
 *
 * @param html - the page
 * @param icons - the file that has all icons as symbols
 * @returns the page with its icons
 */
export function inlineIcons(html: string, icons: string): string {
  const symbols = new Map([...icons.matchAll(SYMBOL)].map(([symbol, id]) => [id!, symbol]));
  const used = new Set<string>();
  const local = html.replace(USE, (_, id: string) => {
    if (!symbols.has(id)) throw new Error(`bug: a page uses the icon ${id}, which is not there`);
    used.add(id);
    return `<use href="#${id}"`;
  });
  if (used.size === 0) return html;
  const held = [...used].map((id) => symbols.get(id)!).join("");
  return local.replace("</body>", () => `<svg class="held-icons" aria-hidden="true">${held}</svg></body>`);
}
