/** What of a pocket card makes it tall. */
export interface CardWords {
  readonly room: string;
  readonly colours: readonly unknown[];
  readonly cuttings: readonly { readonly name: string }[];
  /** Its lines of text, list by list. */
  readonly lists: readonly (readonly string[])[];
}

/** Letters in a line of the card, of its title, and of a name below a cutting; all on the wide side. */
const LINE_LETTERS = 44;
const TITLE_LETTERS = 24;
const NAME_LETTERS = 12;
/** Heights in millimetres, as the style sheet has them. */
const EDGES = 8;
const TITLE = 7;
const HEAD = 7.4;
const LINE = 4.2;
const COLOUR = 6.4;
const CUTTING = 16;
const NAME_LINE = 3.8;
const CUTTINGS_ABREAST = 4;
/** What a letter holds below the page's title, with a line of it to spare. */
const PAGE = 210;

const linesOf = (text: string, letters: number): number =>
  Math.max(1, Math.ceil(text.length / letters));

/** True of a card that no page holds whole below the title: it then begins there and goes on over the page, and no page stays empty. */
export function isTallCard({ room, colours, cuttings, lists }: CardWords): boolean {
  let height = EDGES + linesOf(room, TITLE_LETTERS) * TITLE;
  if (colours.length > 0) height += HEAD + colours.length * COLOUR;
  if (cuttings.length > 0) height += HEAD;
  for (let at = 0; at < cuttings.length; at += CUTTINGS_ABREAST) {
    const row = cuttings.slice(at, at + CUTTINGS_ABREAST);
    height += CUTTING + Math.max(...row.map((c) => linesOf(c.name, NAME_LETTERS))) * NAME_LINE;
  }
  for (const list of lists.filter((each) => each.length > 0))
    height += HEAD + list.reduce((sum, text) => sum + linesOf(text, LINE_LETTERS) * LINE + 1, 0);
  return height > PAGE;
}
