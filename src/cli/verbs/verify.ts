import { readdir, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import type { BagProblem } from "../../archive/bag/examineBag.ts";
import { readTags } from "../../archive/bag/tagFile.ts";
import { type CheckedBag, checkBag } from "../bag/checkBag.ts";
import { type Outcome, UsageError } from "../outcome.ts";
import type { Progress } from "../progress.ts";

/** Problems that are named in the text; the rest are counted, and all stand in the JSON. */
const MOST_SHOWN = 40;

/** Holds a bag against its own lists (RFC 8493) and says in words what has been changed, added or lost since it was made. */
export async function verify(bag: string, progress: Progress): Promise<Outcome> {
  const folder = resolve(bag);
  await requireBag(bag, folder);
  let checked: CheckedBag;
  try {
    checked = await checkBag(folder, (done, of) => progress.show(`Comparing ${done + 1} of ${of}`));
  } catch (error) {
    const { code, path } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    const problem = { file: path ?? bag, what: "cannot be read: look at its permissions" };
    checked = { problems: [problem], compared: 0, bytes: 0, bagInfo: null };
  }
  const { problems } = checked;
  const valid = problems.length === 0;
  return {
    exit: valid ? 0 : 1,
    json: { bag, valid, problems },
    text: valid ? soundWords(bag, checked) : faultWords(bag, problems),
    diagnostics: [],
  };
}

/** Throws a UsageError where there is no such folder, or one that is no bag. */
async function requireBag(bag: string, folder: string): Promise<void> {
  const found = await stat(folder).catch(() => null);
  if (found === null) throw new UsageError(`There is no folder "${bag}".`);
  if (!found.isDirectory())
    throw new UsageError(
      `"${bag}" is a file. A bag is a folder: name the one that has bagit.txt in it.`,
    );
  if (await isDeclared(folder)) return;
  const inside: string[] = [];
  for (const name of (await readdir(folder).catch(() => [])).sort())
    if (await isDeclared(join(folder, name))) inside.push(join(bag, name));
  const instead =
    inside.length === 0 ? "" : ` Name one of those that lie in it: ${inside.join(", ")}`;
  throw new UsageError(`"${bag}" is no bag: there is no file bagit.txt in it.${instead}`);
}

async function isDeclared(folder: string): Promise<boolean> {
  const found = await stat(join(folder, "bagit.txt")).catch(() => null);
  return found?.isFile() === true;
}

function soundWords(bag: string, { compared, bytes, bagInfo }: CheckedBag): string {
  const on = readTags(bagInfo ?? "").find(([label]) => label.toLowerCase() === "bagging-date")?.[1];
  const since = on ? `, as it was made on ${on}` : "";
  return `${bag} is whole${since}: ${compared} files, ${megabytes(bytes)}, none missing, added or changed.`;
}

function faultWords(bag: string, problems: readonly BagProblem[]): string {
  const shown = problems.slice(0, MOST_SHOWN).map(({ file, what }) => `  ${file} ${what}.`);
  const more = problems.length - shown.length;
  const count = problems.length === 1 ? "1 thing is wrong" : `${problems.length} things are wrong`;
  return [
    `${bag} is not as it was made; ${count}:`,
    ...shown,
    ...(more > 0 ? [`  and ${more} more (--json names all).`] : []),
    "If you have another copy of it, verify that one, and put its files back here.",
  ].join("\n");
}

/** Megabytes of a million bytes, one decimal; never nothing. */
export function megabytes(bytes: number): string {
  return `${Math.max(0.1, bytes / 1e6).toFixed(1)} MB`;
}
