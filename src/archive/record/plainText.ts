/** Spaces that hold words together on a page are plain spaces here: a file of plain text must look the same everywhere. */
export function plainSpaces(text: string): string {
  return text.replace(/[\u00a0\u202f\u2009]/g, " ");
}

/** Columns of a line that can be read and printed without being broken. */
const WIDTH = 96;
/** Where what is said of a thing begins, behind what it is about. */
const HANG = 14;

/** A line of a record: what it is about, and what is said, broken between words and hung in. Empty where nothing is said. */
export function entryLines(label: string, words: string, indent = 2): string[] {
  const said = plainSpaces(words).trim();
  if (said === "") return [];
  const lines = wrapped(said, WIDTH - indent - HANG);
  return lines.map(
    (line, at) => `${" ".repeat(indent)}${(at === 0 ? label : "").padEnd(HANG)}${line}`,
  );
}

/** Words in lines of at most so many letters; a longer word has a line of its own. */
export function wrapped(words: string, width = WIDTH): string[] {
  const lines: string[] = [];
  for (const word of words.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** A heading with a rule below it. */
export function heading(words: string, rule = "="): string[] {
  const text = plainSpaces(words);
  return ["", "", text, rule.repeat([...text].length)];
}
