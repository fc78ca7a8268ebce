// Small pictures made here, as the files that users' cameras and programs write.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp, { type Sharp } from "sharp";
import { afterAll } from "vitest";
import type { Place } from "../../src/diagnostics/diagnostic.ts";

export const PLACE: Place = {
  file: "content/cloths/fern.md",
  line: 3,
  column: 16,
  keyPath: "photo.file",
};

/** A picture of one colour, or of the colours that a function gives. */
export function made(
  width: number,
  height: number,
  colourAt: (x: number, y: number) => readonly [number, number, number],
): Sharp {
  const data = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) data.set(colourAt(x, y), (y * width + x) * 3);
  return sharp(data, { raw: { width, height, channels: 3 } });
}

/** Brick above, blue below, a white corner at the top left: it shows any turn. */
export function flag(width = 96, height = 64): Sharp {
  return made(width, height, (x, y) => {
    if (x < width / 4 && y < height / 4) return [255, 255, 255];
    return y < height / 2 ? [200, 80, 40] : [30, 60, 140];
  });
}

const folders: string[] = [];
afterAll(async () => {
  for (const folder of folders) await rm(folder, { recursive: true, force: true });
});

/** A new folder that goes when the tests of the file are over. */
export async function folder(): Promise<string> {
  const path = await mkdtemp(join(tmpdir(), "cloth-images-"));
  folders.push(path);
  return path;
}

/** Writes bytes to a file in a new folder and gives its path. */
export async function file(name: string, bytes: Uint8Array | string): Promise<string> {
  const path = join(await folder(), name);
  await writeFile(path, bytes);
  return path;
}
