import { type BagProblem, compareDigests, examineBag } from "../../archive/bag/examineBag.ts";
import { readBagFolder, reckonDigests } from "./bagFolder.ts";

/** What was found of a bag. */
export interface CheckedBag {
  readonly problems: readonly BagProblem[];
  /** Number of files that were compared, and the bytes of all that lie in it. */
  readonly compared: number;
  readonly bytes: number;
  readonly bagInfo: string | null;
}

/** Reads a whole bag and holds it against its own lists. Throws what the file system throws where a folder cannot be read. */
export async function checkBag(
  folder: string,
  onFile: (done: number, of: number) => void,
): Promise<CheckedBag> {
  const bag = await readBagFolder(folder);
  const { problems, checks } = examineBag(bag);
  const digestOf = await reckonDigests(folder, checks, onFile);
  return {
    problems: [...problems, ...compareDigests(checks, digestOf)],
    compared: new Set(checks.map(({ file }) => file)).size,
    bytes: [...bag.sizes.values()].reduce((sum, size) => sum + size, 0),
    bagInfo: bag.tags.get("bag-info.txt") ?? null,
  };
}
