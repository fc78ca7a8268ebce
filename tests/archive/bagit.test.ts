import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { bagTags } from "../../src/archive/bag/bagTags.ts";
import { DECLARATION, readDeclaration } from "../../src/archive/bag/declaration.ts";
import { compareDigests, examineBag, type FoundBag } from "../../src/archive/bag/examineBag.ts";
import { manifestText, readManifest } from "../../src/archive/bag/manifest.ts";
import { decodePath, encodePath, leavesBag } from "../../src/archive/bag/paths.ts";
import { readTags, tagText } from "../../src/archive/bag/tagFile.ts";

// The rules are those of RFC 8493, "The BagIt File Packaging Format (V1.0)", October 2018; sections and wording from memory. The bag
// below is `v0.97/valid/basic-bag-sha512` of the Library of Congress's BagIt Conformance Suite (public domain), byte for byte: its
// bag-info.txt is rebuilt from its sister's (`basic-bag-sha1`), and its published checksum proves it.

const sha512 = (text: string): string => createHash("sha512").update(text).digest("hex");

const PUBLISHED = new Map([
  ["bagit.txt", "BagIt-Version: 0.97\nTag-File-Character-Encoding: UTF-8\n"],
  [
    "bag-info.txt",
    "Bag-Software-Agent: bagit.py v1.7.0 <https://github.com/LibraryOfCongress/bagit-python>\nBagging-Date: 2018-07-24\nPayload-Oxum: 30.1\n",
  ],
  [
    "manifest-sha512.txt",
    "1d1a9083e03045a84404ffc8b7b4dc921adf0019a39aabcfb49111886cd1168f8e3c62261f2cfdef9e042a8cfa159e0567b394ca41e7bf8f490b0a9730de378c  data/text-file.txt\n",
  ],
  [
    "tagmanifest-sha512.txt",
    [
      "17631d19f89b458f1a77f0b0217486ec00fe92a825f7f96cb3221b42e954197e013e6622ef3145e8a4e20b54cc8efcd115efe33c97db5c2d31101eacf22fe7fa bag-info.txt",
      "418dcfbe17d5f4b454b18630be795462cf7da4ceb6313afa49451aa2568e41f7ca3d34cf0280c7d056dc5681a70c37586aa1755620520b9198eede905ba2d0f6 bagit.txt",
      "6f9cdfe8f547e88680e8c0b4701d8a0bcc5fd9edb1e63d3b5ce1ae0318446a1c5e02a1817605d5f8f6c4767605f163724f4b45ecee2667c1e1ffc2af51f57e65 manifest-sha512.txt",
      "",
    ].join("\n"),
  ],
  ["data/text-file.txt", "Tue, Jul 24, 2018  9:46:02 AM\n"],
]);

/** A bag of files with their text, as it would be found. */
function found(files: ReadonlyMap<string, string>): FoundBag {
  return {
    sizes: new Map([...files].map(([path, text]) => [path, Buffer.byteLength(text)])),
    tags: new Map([...files].filter(([path]) => !path.includes("/"))),
    odd: [],
  };
}

/** All that is wrong with it. */
function faults(files: ReadonlyMap<string, string>): string[] {
  const { problems, checks } = examineBag(found(files));
  const digests = compareDigests(checks, ({ file, algorithm }) =>
    createHash(algorithm)
      .update(files.get(file) ?? "")
      .digest("hex"),
  );
  return [...problems, ...digests].map(({ file, what }) => `${file} ${what}`);
}

/** A bag as the program writes it, from payload files by their path below `data/`. */
function made(payload: Readonly<Record<string, string>>): Map<string, string> {
  const files = Object.entries(payload).map(([path, text]) => ({ path: `data/${path}`, text }));
  const tags = bagTags(
    files.map(({ path, text }) => ({
      path,
      size: Buffer.byteLength(text),
      digest: sha512(text),
    })),
    {
      on: "2026-11-26",
      studio: "Alder Lane Rooms",
      identifier: "quay, revision A",
      description: "Quay",
      program: "roomcloth 0",
    },
  );
  const listed = [...tags].map(([path, text]) => ({ path, digest: sha512(text) }));
  return new Map([
    ...tags,
    ["tagmanifest-sha512.txt", manifestText(listed)] as const,
    ...files.map(({ path, text }) => [path, text] as const),
  ]);
}

/** The same with some of its files another; null takes one away. */
function changed(
  files: ReadonlyMap<string, string>,
  by: Readonly<Record<string, string | null>>,
): Map<string, string> {
  const all = new Map(files);
  for (const [path, text] of Object.entries(by))
    if (text === null) all.delete(path);
    else all.set(path, text);
  return all;
}

test("a published bag is valid, and what is done to it is found", () => {
  expect(faults(PUBLISHED)).toEqual([]);
  expect(
    faults(changed(PUBLISHED, { "data/text-file.txt": "Tue, Jul 24, 2018  9:46:03 AM\n" })),
  ).toEqual(["data/text-file.txt has been changed since it was archived"]);
  expect(faults(changed(PUBLISHED, { "data/text-file.txt": null }))).toEqual([
    "bag-info.txt says that data holds 1 file of 30 bytes; it holds 0 files of 0 bytes",
    "data/text-file.txt is missing",
  ]);
});

test("what the program writes is the same as the published lists, but for the edition and its own name", () => {
  const own = made({ "text-file.txt": "Tue, Jul 24, 2018  9:46:02 AM\n" });
  expect(own.get("manifest-sha512.txt")).toBe(PUBLISHED.get("manifest-sha512.txt"));
  expect(own.get("bag-info.txt")).toContain("Payload-Oxum: 30.1\n");
  expect(faults(own)).toEqual([]);
});

test("bagit.txt is two lines and nothing else (2.1.1)", () => {
  expect(DECLARATION).toBe("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
  expect(readDeclaration(DECLARATION)).toEqual({ isOld: false, fault: null });
  expect(readDeclaration(DECLARATION.replaceAll("\n", "\r\n")).fault).toBeNull();
  expect(readDeclaration(PUBLISHED.get("bagit.txt") as string)).toEqual({
    isOld: true,
    fault: null,
  });
  for (const [text, words] of [
    // One space behind the colon and none before it: the suite has such a bag among the invalid ones, whose text was not at hand.
    ["BagIt-Version : 1.0\nTag-File-Character-Encoding: UTF-8\n", "not the two lines"],
    ["BagIt-Version:  1.0\nTag-File-Character-Encoding: UTF-8\n", "not the two lines"],
    ["\uFEFFBagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n", "not the two lines"],
    ["BagIt-Version: 1.0\n", "not the two lines"],
    ["BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\nMore: yes\n", "not the two lines"],
    ["BagIt-Version: 2.0\nTag-File-Character-Encoding: UTF-8\n", "edition 2.0"],
    ["BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-16\n", "in UTF-16"],
    [null, "not the two lines"],
  ] as const) {
    expect(readDeclaration(text).fault, String(text)).toContain(words);
  }
});

test("CR, LF and the percent sign are encoded in a manifest, and nothing else (2.1.3)", () => {
  expect(encodePath("data/50% off\r\n?.txt")).toBe("data/50%25 off%0D%0A?.txt");
  expect(encodePath("data/Núñez ü #+.txt")).toBe("data/Núñez ü #+.txt");
  for (const path of ["data/%0A", "data/%250a", "data/a\nb", "data/100%", "data/%25%0d"])
    expect(decodePath(encodePath(path))).toBe(path);
  expect(decodePath("data/a%0ab%0Dc%20d")).toBe("data/a\nb\rc%20d");
  const odd = made({ "50% of\nall.txt": "x", "plain.txt": "y" });
  expect(odd.get("manifest-sha512.txt")).toContain("  data/50%25 of%0Aall.txt\n");
  expect(faults(odd)).toEqual([]);
});

test("a manifest's lines: one or more blanks, either case, any line end; the file may not stand twice (2.1.3)", () => {
  const digest = "ab".repeat(16);
  const text = `${digest}  data/a b.txt\r\n${digest.toUpperCase()}\tdata/c\r${digest} data/d\n`;
  expect(readManifest(text, 32)).toEqual({
    files: ["data/a b.txt", "data/c", "data/d"].map((path) => ({ path, digest })),
    faults: [],
  });
  expect(readManifest(`${digest}  data/c\n${digest}  data/c\n`, 32).faults).toEqual([
    "names data/c twice",
  ]);
  expect(readManifest(`nonsense\n${digest}\n${digest.slice(1)}  data/c\n`, 32).faults).toEqual(
    [1, 2, 3].map((line) => `has a line that is no checksum and file, line ${line}`),
  );
});

test("a list that could lead out of the bag is not followed (5)", () => {
  // The first is the suite's v0.97/invalid/out-of-scope-file-paths-using-dot-notation.
  for (const path of [
    "../../../README.md",
    "data/../../secret",
    "/etc/passwd",
    "~/letters",
    "~root/x",
    "C:\\letters",
    "c:letters",
    "\\\\disk\\letters",
    "data\\..\\..\\x",
  ]) {
    expect(leavesBag(path), path).toBe(true);
    const list = `${sha512("x")}  ${path}\n`;
    const bag = changed(made({ "a.txt": "a" }), { "manifest-sha512.txt": list });
    expect(examineBag(found(bag)).checks.map(({ file }) => file)).not.toContain(path);
    expect(faults(bag).join("\n")).toContain(`names a file outside the bag, “${path}”`);
  }
  for (const path of ["data/..a", "data/a..", "data/a~b", "data/.../x"])
    expect(leavesBag(path)).toBe(false);
});

test("every payload file stands in every manifest (3), before edition 1.0 in one", () => {
  const bag = made({ "a.txt": "a", "b.txt": "b" });
  expect(faults(changed(bag, { "data/c.txt": "" }))).toEqual([
    "bag-info.txt says that data holds 2 files of 2 bytes; it holds 3 files of 2 bytes",
    "data/c.txt was added later: no list names it",
  ]);
  const md5 = createHash("md5").update("a").digest("hex");
  const two = changed(bag, { "manifest-md5.txt": `${md5}  data/a.txt\n` });
  expect(faults(two)).toEqual(["data/b.txt is not named in manifest-md5.txt"]);
  const old = changed(PUBLISHED, {
    "data/a.txt": "a",
    "manifest-md5.txt": `${md5}  data/a.txt\n`,
    "bag-info.txt": null,
    "tagmanifest-sha512.txt": null,
  });
  expect(faults(old)).toEqual([]);
});

test("two manifests that disagree are told, and so is one of an unknown kind (2.4)", () => {
  const bag = made({ "a.txt": "a" });
  expect(faults(changed(bag, { "manifest-md5.txt": `${"0".repeat(32)}  data/a.txt\n` }))).toEqual([
    "data/a.txt has been changed since it was archived",
  ]);
  expect(faults(changed(bag, { "manifest-whirl9.txt": "00  data/a.txt\n" }))).toEqual([
    "manifest-whirl9.txt has checksums of a kind that is not known here, whirl9",
  ]);
  const none = changed(bag, { "manifest-sha512.txt": null, "tagmanifest-sha512.txt": null });
  expect(faults(none)).toEqual([
    "manifest-sha512.txt is not there, nor any other list of files that can be checked",
  ]);
});

test("the tag manifest covers the tag files (2.2.1), and each list its own side", () => {
  const bag = made({ "a.txt": "a" });
  const info = bag.get("bag-info.txt") as string;
  expect(faults(changed(bag, { "bag-info.txt": info.replace("Alder", "Elder") }))).toEqual([
    "bag-info.txt has been changed since it was archived",
  ]);
  expect(faults(changed(bag, { "bag-info.txt": null }))).toEqual(["bag-info.txt is missing"]);
  const tags = bag.get("tagmanifest-sha512.txt") as string;
  expect(
    faults(changed(bag, { "tagmanifest-sha512.txt": `${tags}${sha512("a")}  data/a.txt\n` })),
  ).toEqual(["tagmanifest-sha512.txt names data/a.txt, which belongs in the list of data"]);
  // Other files beside data are allowed, and nobody vouches for them (2.2.4).
  expect(faults(changed(bag, { "note.txt": "mine" }))).toEqual([]);
});

test("Payload-Oxum is bytes and files of data alone, and stands once (2.2.2)", () => {
  const bag = made({ "ä.txt": "ä", "sub/b.txt": "bb" });
  expect(bag.get("bag-info.txt")).toContain("Payload-Oxum: 4.2\n");
  const info = bag.get("bag-info.txt") as string;
  const without = changed(bag, { "tagmanifest-sha512.txt": null });
  const said = (text: string) => faults(changed(without, { "bag-info.txt": text }));
  expect(said(info.replace("4.2", "5.2"))).toEqual([
    "bag-info.txt says that data holds 2 files of 5 bytes; it holds 2 files of 4 bytes",
  ]);
  expect(said(info.replace("4.2", "many"))[0]).toContain("“many”");
  expect(said(`${info}payload-oxum: 4.2\n`)).toEqual([
    "bag-info.txt says twice how much data there is",
  ]);
  expect(said("Contact-Name: Ada Wren\n")).toEqual([]);
});

test("what has to be fetched is not there, and it is said (2.2.3)", () => {
  const bag = made({ "a.txt": "a" });
  expect(
    faults(changed(bag, { "fetch.txt": "https://far.example/b 1 data/b.txt\n" }))[0],
  ).toContain("fetch.txt lists files that are to be fetched from elsewhere");
});

test("an accent written in another way is the same file (6)", () => {
  // As the suite's v0.97/warning/filename-normalization: the list has one form, the disk the other.
  const bag = made({ "Núñez.txt": "x" });
  const text = bag.get("data/Núñez.txt") as string;
  const moved = changed(bag, { "data/Núñez.txt": null });
  moved.set("data/Núñez.txt".normalize("NFD"), text);
  expect(faults(moved)).toEqual([]);
});

test("what a file browser leaves behind is told for what it is", () => {
  const bag = changed(made({ "a.txt": "a" }), { "data/.DS_Store": "" });
  expect(faults(bag).at(-1)).toContain("data/.DS_Store was put there by a computer");
});

test("labels go on over lines that are set in, and come back (2.2.2)", () => {
  expect(
    tagText([
      ["A", "one\n\n two"],
      ["B", "three: four"],
    ]),
  ).toBe("A: one\n  two\nB: three: four\n");
  expect(readTags("A: one\n  two\nB:\tthree: four\r\nno label\n")).toEqual([
    ["A", "one two"],
    ["B", "three: four"],
  ]);
});

test("links are never followed", () => {
  const bag = { ...found(made({ "a.txt": "a" })), odd: ["data/link"] };
  expect(examineBag(bag).problems[0]).toMatchObject({ file: "data/link" });
});

test("whatever is done to one letter of a bag, its valid lists tell", () => {
  const bag = made({ "a.txt": "alpha", "sub/b % c.txt": "beta", "empty.txt": "" });
  // The list over the lists has none over itself: a letter of its names may be another, of a file that is then not there.
  const paths = [...bag.keys()];
  fc.assert(
    fc.property(
      fc.constantFrom(...paths),
      fc.nat(),
      fc.constantFrom("x", "0", " ", "\n", ""),
      (path, at, by) => {
        const text = bag.get(path) as string;
        const where = text.length === 0 ? 0 : at % text.length;
        const other = text.slice(0, where) + by + text.slice(where + 1);
        // Line ends and blanks of a list may differ, and the case of a checksum.
        const isList = path.startsWith("tagmanifest");
        const meaning = (list: string): unknown => (isList ? readManifest(list, 128) : list);
        fc.pre(JSON.stringify(meaning(other)) !== JSON.stringify(meaning(text)));
        expect(faults(changed(bag, { [path]: other }))).not.toEqual([]);
      },
    ),
    { numRuns: process.env.SOAK ? 20_000 : 400, seed: 8493 },
  );
});
