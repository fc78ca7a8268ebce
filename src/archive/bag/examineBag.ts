import { readDeclaration } from "./declaration.ts";
import { ALGORITHMS, readManifest } from "./manifest.ts";
import { byPath } from "./paths.ts";
import { readTags } from "./tagFile.ts";

/** A bag's folder as it was found. */
export interface FoundBag {
  /** Every file with its size in bytes, by its path below the bag with forward slashes. */
  readonly sizes: ReadonlyMap<string, number>;
  /** The text of each `.txt` file beside `data/`; null where it is not UTF-8. */
  readonly tags: ReadonlyMap<string, string | null>;
  /** Links, and what is neither file nor folder: none is followed. */
  readonly odd: readonly string[];
}

export interface BagProblem {
  readonly file: string;
  /** What is wrong with it, to be read behind its name: `has been changed since it was archived`. */
  readonly what: string;
}

/** A checksum to be reckoned and held against the one that was written. */
export interface DigestCheck {
  readonly file: string;
  readonly algorithm: string;
  readonly digest: string;
}

export interface Examined {
  readonly problems: readonly BagProblem[];
  readonly checks: readonly DigestCheck[];
}

const PAYLOAD = /^manifest-([a-z0-9-]+)\.txt$/i;
const TAGS = /^tagmanifest-([a-z0-9-]+)\.txt$/i;
/** Files that computers leave in folders that are looked at. */
const LEFT_BEHIND = /(?:^|\/)(?:\.DS_Store|\._[^/]+|Thumbs\.db|desktop\.ini)$/i;

/**
 * Everything about a bag that can be told without reading its payload, by the rules of RFC 8493 (section 3: complete), and the checksums
 * that are left to compare for it to be valid.
 */
export function examineBag(bag: FoundBag): Examined {
  const { isOld, fault } = readDeclaration(bag.tags.get("bagit.txt") ?? null);
  const problems: BagProblem[] = bag.odd.map((file) => ({
    file,
    what: "is a link to another place, or no file at all, and is not looked at",
  }));
  if (fault !== null) problems.push({ file: "bagit.txt", what: fault });
  if (bag.tags.has("fetch.txt"))
    problems.push({
      file: "fetch.txt",
      what: "lists files that are to be fetched from elsewhere, which is not supported: a bag must hold all that it lists",
    });
  const payload = listsOf(bag, PAYLOAD, isOld, problems);
  const tags = listsOf(bag, TAGS, isOld, problems);
  if (payload.every((list) => list.files === null))
    problems.push({
      file: "manifest-sha512.txt",
      what: "is not there, nor any other list of files that can be checked",
    });
  const checks = [...payload, ...tags].flatMap((list) => presentOf(bag, list, problems));
  completeness(bag, payload, isOld, problems);
  problems.push(...oxumProblems(bag));
  return { problems: sorted(problems), checks };
}

/** The files whose checksum is another than the one written; null stands for one that could not be read. */
export function compareDigests(
  checks: readonly DigestCheck[],
  digestOf: (check: DigestCheck) => string | null,
): BagProblem[] {
  return sorted(
    checks.flatMap((check): BagProblem[] => {
      const found = digestOf(check);
      if (found === check.digest) return [];
      const what = found === null ? "cannot be read" : "has been changed since it was archived";
      return [{ file: check.file, what }];
    }),
  );
}

interface List {
  readonly name: string;
  readonly algorithm: string;
  /** What it lists by the path as found; null where it cannot be checked. */
  readonly files: ReadonlyMap<string, string> | null;
  /** True of the list of the payload. */
  readonly isPayload: boolean;
}

/** The lists of one sort, with what is wrong with their lines. */
function listsOf(bag: FoundBag, name: RegExp, isOld: boolean, problems: BagProblem[]): List[] {
  const isPayload = name === PAYLOAD;
  // One accent can be written in two ways, and some disks change one into the other (RFC 8493, 6).
  const byForm = new Map([...bag.sizes.keys()].map((path) => [path.normalize("NFC"), path]));
  return [...bag.tags]
    .sort(([a], [b]) => byPath(a, b))
    .flatMap(([file, text]): List[] => {
      const algorithm = name.exec(file)?.[1]?.toLowerCase();
      if (algorithm === undefined) return [];
      const digits = ALGORITHMS[algorithm];
      const list = { name: file, algorithm, isPayload };
      if (digits === undefined || text === null) {
        const what =
          text === null
            ? "is not plain text in UTF-8"
            : `has checksums of a kind that is not known here, ${algorithm}`;
        problems.push({ file, what });
        return [{ ...list, files: null }];
      }
      const read = readManifest(text, digits, isOld);
      problems.push(...read.faults.map((what) => ({ file, what })));
      const own = read.files.filter(({ path }) => path.startsWith("data/") === isPayload);
      for (const { path } of read.files)
        if (!own.some((each) => each.path === path))
          problems.push({
            file,
            what: isPayload
              ? `names ${path}, which does not lie in data`
              : `names ${path}, which belongs in the list of data`,
          });
      const found = (path: string): string =>
        bag.sizes.has(path) ? path : (byForm.get(path.normalize("NFC")) ?? path);
      return [{ ...list, files: new Map(own.map(({ path, digest }) => [found(path), digest])) }];
    });
}

/** Of a list the files that are there, to be checked; what is missing is told. */
function presentOf(
  bag: FoundBag,
  { files, algorithm }: List,
  problems: BagProblem[],
): DigestCheck[] {
  return [...(files ?? [])].flatMap(([file, digest]): DigestCheck[] => {
    if (bag.sizes.has(file)) return [{ file, algorithm, digest }];
    problems.push({ file, what: "is missing" });
    return [];
  });
}

/** Every file of the payload must stand in every list of it; before edition 1.0, in one (RFC 8493, 3). */
function completeness(
  bag: FoundBag,
  payload: readonly List[],
  isOld: boolean,
  problems: BagProblem[],
): void {
  const lists = payload.filter((list) => list.files !== null);
  if (lists.length === 0) return;
  for (const file of bag.sizes.keys()) {
    if (!file.startsWith("data/")) continue;
    const without = lists.filter((list) => !list.files?.has(file));
    if (without.length === 0 || (isOld && without.length < lists.length)) continue;
    const what = LEFT_BEHIND.test(file)
      ? "was put there by a computer when the folder was looked at, and is no part of the bag; delete it"
      : without.length === lists.length
        ? "was added later: no list names it"
        : `is not named in ${without.map(({ name }) => name).join(" and ")}`;
    problems.push({ file, what });
  }
}

/** `Payload-Oxum` is the size of the payload in bytes and its number of files (RFC 8493, 2.2.2). */
function oxumProblems({ sizes, tags }: FoundBag): BagProblem[] {
  const file = "bag-info.txt";
  const text = tags.get(file);
  if (text === undefined) return [];
  if (text === null) return [{ file, what: "is not plain text in UTF-8" }];
  const said = readTags(text).flatMap(([label, value]) =>
    label.toLowerCase() === "payload-oxum" ? [value] : [],
  );
  if (said.length > 1) return [{ file, what: "says twice how much data there is" }];
  const is = payloadOxum(sizes);
  if (said.length === 0 || said[0] === is) return [];
  return [
    {
      file,
      what: `says that data holds ${oxumWords(said[0] as string)}; it holds ${oxumWords(is)}`,
    },
  ];
}

/** Bytes and number of the files below `data/`, as `bytes.files`. */
export function payloadOxum(sizes: ReadonlyMap<string, number>): string {
  const payload = [...sizes].filter(([path]) => path.startsWith("data/"));
  return `${payload.reduce((sum, [, size]) => sum + size, 0)}.${payload.length}`;
}

function oxumWords(oxum: string): string {
  const [, bytes, files] = /^(\d+)\.(\d+)$/.exec(oxum) ?? [];
  if (bytes === undefined || files === undefined) return `“${oxum}”`;
  return `${files} ${files === "1" ? "file" : "files"} of ${bytes} bytes`;
}

/** By file, each said once: two lists may tell the same. */
function sorted(problems: readonly BagProblem[]): BagProblem[] {
  const each = new Map(problems.map((p) => [`${p.file}\n${p.what}`, p]));
  return [...each.values()].sort((a, b) => byPath(a.file, b.file) || byPath(a.what, b.what));
}
