import { DECLARATION } from "./declaration.ts";
import { payloadOxum } from "./examineBag.ts";
import { type Listed, manifestText } from "./manifest.ts";
import { type Tag, tagText } from "./tagFile.ts";

/**
 * The one checksum that new bags bear. RFC 8493, 2.4, has it as what a program should take where nobody says otherwise, and one list is
 * enough: `sha512sum` of any system reads it.
 */
export const BAG_ALGORITHM = "sha512";
export const MANIFEST = `manifest-${BAG_ALGORITHM}.txt`;
export const TAG_MANIFEST = `tagmanifest-${BAG_ALGORITHM}.txt`;

/** What `bag-info.txt` says of a bag, beside its size (RFC 8493, 2.2.2). */
export interface BagInfo {
  /** The ISO date on which it was made. */
  readonly on: string;
  readonly studio: string;
  /** What the studio knows it by: the project's folder and its revision. */
  readonly identifier: string;
  readonly description: string;
  readonly program: string;
}

/** A payload file with its size in bytes and its checksum; its path begins with `data/`. */
export interface PayloadFile extends Listed {
  readonly size: number;
}

/** The tag files of a bag but the list over themselves, by their names. */
export function bagTags(payload: readonly PayloadFile[], info: BagInfo): Map<string, string> {
  const sizes = new Map(payload.map(({ path, size }) => [path, size]));
  const tags: Tag[] = [
    ["Source-Organization", info.studio],
    ["External-Identifier", info.identifier],
    ["Internal-Sender-Description", info.description],
    ["Bagging-Date", info.on],
    ["Bag-Software-Agent", info.program],
    ["Payload-Oxum", payloadOxum(sizes)],
  ];
  return new Map([
    ["bagit.txt", DECLARATION],
    ["bag-info.txt", tagText(tags)],
    [MANIFEST, manifestText(payload)],
  ]);
}
