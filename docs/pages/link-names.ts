const LINK = /<a\b[^>]*>.*?<\/a>/gs;
const NAME = /<code>([A-Za-z]\w*)<\/code>/g;

/**
 * Makes a link of every name of the library that stands as code in the text of a page: `<code>planFrame</code>`.
 *
 * @param html - the page
 * @param addressOf - the address of a name's own page, from this page; undefined for what is no name
 * @returns the page with links; code in blocks and within links is left alone
 */
export function linkNames(html: string, addressOf: (name: string) => string | undefined): string {
  // What stands between the links.
  let result = "";
  let end = 0;
  const linked = (text: string): string =>
    text.replace(NAME, (code, name: string) => {
      const address = addressOf(name);
      return address === undefined ? code : `<a href="${address}">${code}</a>`;
    });
  for (const link of html.matchAll(LINK)) {
    result += linked(html.slice(end, link.index)) + link[0];
    end = link.index + link[0].length;
  }
  return result + linked(html.slice(end));
}
