import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { cacheKey, openCache, sha256 } from "../../src/images/cache.ts";
import { hashOf } from "../../src/images/codeHash.ts";
import { limiter } from "../../src/images/limiter.ts";
import { file, folder } from "./made.ts";

const INPUTS = {
  what: "measurement",
  sha256: sha256("bytes"),
  options: { b: 1, a: [2] },
};

test("SHA-256 is the published one (FIPS 180-4 example 'abc')", () => {
  expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
});

test("a key changes with each of its inputs, and with nothing else", () => {
  const key = cacheKey(INPUTS);
  expect(cacheKey({ ...INPUTS, options: { a: [2], b: 1 } })).toBe(key);
  const others = [
    { ...INPUTS, what: "picture" },
    { ...INPUTS, sha256: sha256("other") },
    { ...INPUTS, options: { b: 1, a: [3] } },
  ].map(cacheKey);
  expect(new Set([key, ...others]).size).toBe(4);
});

test("the code's hash changes with a file's name and folder, and with what is in it", async () => {
  const [one, other] = [await folder(), await folder()];
  await writeFile(join(one, "a.ts"), "1");
  await writeFile(join(other, "a.ts"), "1");
  expect(hashOf([one])).toBe(hashOf([other]));
  await writeFile(join(other, "a.ts"), "2");
  const changed = hashOf([other]);
  expect(changed).not.toBe(hashOf([one]));
  await writeFile(join(one, "b.ts"), "");
  expect(new Set([hashOf([one]), changed, hashOf([one, other])]).size).toBe(3);
  const flat = hashOf([one]);
  await mkdir(join(one, "below"));
  await writeFile(join(one, "below/b.ts"), "1");
  const deeper = hashOf([one]);
  await writeFile(join(one, "below/b.ts"), "2");
  expect(new Set([flat, deeper, hashOf([one])]).size).toBe(3);
});

test("what was written is read; what was not is not there", async () => {
  const cache = openCache(join(await folder(), "made/when/needed"));
  const key = cacheKey(INPUTS);
  expect(await cache.readJson(key)).toBeNull();
  await cache.writeJson(key, { shares: [0.5, 0.5], name: "ivory" });
  expect(await cache.readJson(key)).toEqual({ shares: [0.5, 0.5], name: "ivory" });
  await cache.writeBytes(key, Buffer.from([1, 2, 3]));
  expect([...((await cache.readBytes(key)) ?? [])]).toEqual([1, 2, 3]);
  expect(await cache.readJson(key)).toBeNull();
});

test("a damaged entry counts as not there and can be written again", async () => {
  const root = await folder();
  const cache = openCache(root);
  const key = cacheKey(INPUTS);
  await cache.writeJson(key, { share: 0.25 });
  const path = join(root, key.slice(0, 2), key.slice(2));
  const good = await readFile(path);
  for (let i = 0; i < good.length; i++) {
    const bad = Buffer.from(good);
    bad[i] = (bad[i] as number) ^ 1;
    await writeFile(path, bad);
    expect(await cache.readJson(key), `byte ${i}`).toBeNull();
    await writeFile(path, good.subarray(0, i));
    expect(await cache.readJson(key), `cut at ${i}`).toBeNull();
  }
  await cache.writeJson(key, { share: 0.25 });
  expect(await cache.readJson(key)).toEqual({ share: 0.25 });
  expect(await readdir(join(root, key.slice(0, 2)))).toEqual([key.slice(2)]);
});

test("a cache that cannot be written does no harm", async () => {
  const cache = openCache(await file("a-file", "in the way"));
  await cache.writeJson(cacheKey(INPUTS), { share: 1 });
  expect(await cache.readJson(cacheKey(INPUTS))).toBeNull();
});

test("at most two tasks run at once, in order, and a failing one frees its place", async () => {
  const run = limiter(2);
  let now = 0;
  let most = 0;
  const started: number[] = [];
  const results = await Promise.allSettled(
    Array.from({ length: 20 }, (_, i) =>
      run(async () => {
        started.push(i);
        most = Math.max(most, ++now);
        await new Promise((resolve) => setTimeout(resolve, (i * 7) % 5));
        now--;
        if (i % 4 === 3) throw new Error(`task ${i}`);
        return i;
      }),
    ),
  );
  expect(most).toBe(2);
  expect(started).toEqual(Array.from({ length: 20 }, (_, i) => i));
  expect(results.filter((r) => r.status === "rejected")).toHaveLength(5);
  expect(await run(async () => "after")).toBe("after");
});
