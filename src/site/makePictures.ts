import { mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import type { PagePicture } from "../documents/page.ts";
import { type Cache, cacheKey, NO_CACHE, openCache, sha256 } from "../images/cache.ts";
import { limiter } from "../images/limiter.ts";
import { makePicture } from "../images/makePicture.ts";
import { decodePhoto } from "../images/photo/decodePhoto.ts";
import { loadPhotoFile } from "../images/photo/loadPhotoFile.ts";
import { printJpeg } from "../images/printJpeg.ts";
import { tilePicture } from "../images/tile/makeTile.ts";
import { writeAtomically } from "../images/writeAtomically.ts";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import type { MakePictures } from "./computed.ts";

async function makeTile(
  picture: PagePicture,
  source: string,
  destination: string,
  place: Place,
  cache: Cache,
): Promise<readonly Diagnostic[]> {
  const file = await loadPhotoFile(source, place);
  if (file.value === null) return file.diagnostics;
  const key = cacheKey({
    what: "tile",
    sha256: sha256(file.value.bytes),
    options: {
      widthPx: picture.widthPx,
      tile: picture.tile,
      ...(picture.grey ? { grey: true } : {}),
    },
  });
  let jpeg = await cache.readBytes(key);
  if (jpeg === null) {
    const decoded = await decodePhoto(file.value, place);
    if (decoded.value === null || picture.tile === null) return decoded.diagnostics;
    const { width, height, data } = decoded.value.pixels;
    const made = await tilePicture(
      data as Uint8Array,
      width,
      height,
      picture.tile,
      picture.widthPx,
    );
    jpeg = await printJpeg(made, picture.grey);
    await cache.writeBytes(key, jpeg);
  }
  await writeAtomically(destination, jpeg);
  return [];
}

/** Makes the pictures of all pages below the staging folder, each path once, two at a time. */
export const makePictures: MakePictures = async (pages, work) => {
  const all = [
    ...new Map(
      pages.flatMap((page) => page.pictures).map((picture) => [picture.path, picture]),
    ).values(),
  ];
  const folder = work.useCache ? cacheSubfolder("pictures") : null;
  const cache = folder ? openCache(folder) : NO_CACHE;
  const run = limiter(2);
  const failed: string[] = [];
  const diagnostics: Diagnostic[] = [];
  let done = 0;
  await Promise.all(
    all.map((picture) =>
      run(async () => {
        const source = join(work.contentDir, picture.source);
        const destination = join(work.stagingDir, picture.path);
        const place: Place = {
          file: picture.source,
          line: null,
          column: null,
          keyPath: null,
        };
        await mkdir(dirname(destination), { recursive: true });
        const found = picture.tile
          ? await makeTile(picture, source, destination, place, cache)
          : (
              await makePicture({
                source,
                crop: picture.crop,
                widthPx: picture.widthPx,
                grey: picture.grey,
                destination,
                place,
                cache,
              })
            ).diagnostics;
        diagnostics.push(...found);
        if (found.some((d) => d.severity === "error")) failed.push(picture.path);
        work.onProgress(`Made ${++done} of ${all.length} pictures`);
      }),
    ),
  );
  return { value: { failed }, diagnostics };
};
