import { z } from "zod";

/** One thing of a proposal as the client read it. */
const sentItem = z.strictObject({
  room: z.string(),
  roomName: z.string(),
  item: z.string(),
  /** What it is called there: `Drapery, garden window`. */
  what: z.string(),
  /** Names of the cloths that it was priced with. */
  cloths: z.array(z.string()),
  /** The way to make it that was drawn, where it has several. */
  way: z.string().nullable(),
  /** How it is to be made, by the keys of its room's file; not in records of before this was kept. */
  made: z.record(z.string(), z.string()).optional(),
  /** Its place, pieces, edge, what comes ready with it and the cloths of its parts, in words; not in records of before this was kept. */
  parts: z.record(z.string(), z.string()).optional(),
  /** What the client pays for it, in minor units, with the tax that comes on top. */
  sumMinor: z.int(),
  /** True where a price of it was still to come. */
  open: z.boolean(),
});

/** What belongs to the whole project: a fee, freight, the reserve. */
const sentOther = z.strictObject({
  what: z.string(),
  sumMinor: z.int(),
  open: z.boolean(),
});

const sentRevision = z.strictObject({
  /** The edition of this record's own form. */
  form: z.literal(1),
  project: z.string(),
  revision: z.string(),
  /** Days of ISO 8601: when it was recorded, and the date that stands on the documents. */
  sent: z.iso.date(),
  dated: z.iso.date(),
  /** A code of ISO 4217. */
  currency: z.string(),
  items: z.array(sentItem),
  others: z.array(sentOther),
  totalMinor: z.int(),
});

export type SentItem = Readonly<z.output<typeof sentItem>>;
export type SentOther = Readonly<z.output<typeof sentOther>>;

/** A proposal that left the studio: what the client read of each thing, and no price that the client may not see. */
export type SentRevision = Readonly<z.output<typeof sentRevision>>;

/** The record that a file holds; null where it holds none. */
export function readSent(text: string): SentRevision | null {
  try {
    return sentRevision.safeParse(JSON.parse(text)).data ?? null;
  } catch {
    return null;
  }
}

/** The file's text: keys in their order, two spaces, a last line end, so that versions of it can be compared. */
export function writeSent(record: SentRevision): string {
  return `${JSON.stringify(record, null, 2)}\n`;
}

/** True where two records say the same, whenever they were written; what only one of them keeps is not held against the other. */
export function isSame(one: SentRevision, other: SentRevision): boolean {
  const kept = (key: "made" | "parts"): boolean =>
    [one, other].every((r) => r.items.every((item) => item[key] !== undefined));
  const [keepMade, keepParts] = [kept("made"), kept("parts")];
  const items = (r: SentRevision) =>
    r.items.map(({ made, parts, ...rest }) => ({
      ...rest,
      ...(keepMade ? { made } : {}),
      ...(keepParts ? { parts } : {}),
    }));
  const undated = (r: SentRevision) =>
    JSON.stringify({ ...r, items: items(r), sent: "", dated: "" });
  return undated(one) === undated(other);
}
