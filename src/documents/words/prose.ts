/** The words of a room, split for the board. */
export interface BoardWords {
  /** The first paragraph, or the room's own standfirst. */
  readonly standfirst: string;
  /** Markdown that stands on the board. */
  readonly onBoard: string;
  /** Markdown that goes to a words page, or empty. */
  readonly further: string;
}

/** Over this many words the board keeps the beginning and the rest goes to a page of its own. */
const MOST_WORDS = 170;

const count = (text: string): number => text.split(/\s+/).filter((w) => w !== "").length;

/** A paragraph as plain words: emphasis and links without their marks. */
function plain(markdown: string): string {
  return markdown
    .replace(/^#+\s*/gm, "")
    .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replace(/[*_`]{1,3}([^*_`]+)[*_`]{1,3}/g, "$1")
    .replace(/\s+/g, " ")
    .trim();
}

/** Splits a room's Markdown by paragraphs: standfirst, what fits the board, the rest. Never cuts a paragraph. */
export function boardWords(body: string, own: string | null): BoardWords {
  const paragraphs = body
    .split(/\n\s*\n/)
    .map((p) => p.trim())
    .filter((p) => p !== "");
  const standfirst =
    own ??
    (paragraphs[0] !== undefined && count(paragraphs[0]) <= 45
      ? plain(paragraphs.shift() as string)
      : "");
  const onBoard: string[] = [];
  let words = count(standfirst);
  while (paragraphs.length > 0 && words + count(paragraphs[0] as string) <= MOST_WORDS) {
    const next = paragraphs.shift() as string;
    words += count(next);
    onBoard.push(next);
  }
  return {
    standfirst,
    onBoard: onBoard.join("\n\n"),
    further: paragraphs.join("\n\n"),
  };
}
