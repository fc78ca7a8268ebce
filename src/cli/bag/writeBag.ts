import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import {
  BAG_ALGORITHM,
  type BagInfo,
  bagTags,
  type PayloadFile,
  TAG_MANIFEST,
} from "../../archive/bag/bagTags.ts";
import { manifestText } from "../../archive/bag/manifest.ts";
import { digestsOf, filesBelow } from "./bagFolder.ts";

/** Makes a bag of a folder that holds nothing but `data/`: reckons the checksums and writes the lists beside it. */
export async function writeBagTags(
  folder: string,
  info: BagInfo,
  onFile: (done: number, of: number) => void,
): Promise<void> {
  const { sizes } = await filesBelow(folder);
  const payload: PayloadFile[] = [];
  for (const [path, size] of sizes) {
    onFile(payload.length, sizes.size);
    payload.push({ path, size, digest: await digestOf(join(folder, path)) });
  }
  const tags = bagTags(payload, info);
  for (const [name, text] of tags) await writeFile(join(folder, name), text);
  const listed = [];
  for (const path of tags.keys()) listed.push({ path, digest: await digestOf(join(folder, path)) });
  await writeFile(join(folder, TAG_MANIFEST), manifestText(listed));
}

async function digestOf(path: string): Promise<string> {
  return (await digestsOf(path, [BAG_ALGORITHM])).get(BAG_ALGORITHM) as string;
}
