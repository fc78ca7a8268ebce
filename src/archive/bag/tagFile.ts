/** A label and what stands behind it. */
export type Tag = readonly [label: string, value: string];

/** The text of `bag-info.txt`: a line a label. A line end inside a value begins a new line, set in as the standard has it. */
export function tagText(tags: readonly Tag[]): string {
  return tags
    .map(
      ([label, value]) =>
        `${label}: ${value
          .trim()
          .split(/\s*[\r\n]+\s*/)
          .join("\n  ")}\n`,
    )
    .join("");
}

/** Reads such a file (RFC 8493, 2.2.2): a line that begins with a space or a tab goes on with the one before. Others are left out. */
export function readTags(text: string): Tag[] {
  const tags: Tag[] = [];
  for (const line of text.split(/\r\n|\n|\r/)) {
    const last = tags.at(-1);
    const [, label, value] = /^([^:\s][^:]*?)\s*:\s*(.*)$/.exec(line) ?? [];
    if (/^[ \t]/.test(line) && last) tags[tags.length - 1] = [last[0], `${last[1]} ${line.trim()}`];
    else if (label !== undefined) tags.push([label, (value ?? "").trim()]);
  }
  return tags;
}
