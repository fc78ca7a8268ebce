const LIGATURES: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
};

/** Longest slug in characters: with an ending it stays below the 255 bytes that a file's name may have, in any script. */
const MOST = 72;

/**
 * A text as a name that is safe in files and addresses: small letters and figures of any script, accents of Latin, Greek and
 * Cyrillic letters folded, everything else a hyphen. Empty where the text has neither letter nor figure.
 */
export function slug(text: string): string {
  const plain = text
    .toLowerCase()
    .replace(/['’]/g, "")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[ßæœøłđðþı]/g, (letter) => LIGATURES[letter] as string)
    .normalize("NFC");
  const words = plain.replace(/[^\p{L}\p{N}\p{M}]+/gu, "-").replace(/^[-\p{M}]+|-+$/gu, "");
  const letters = [...words];
  if (letters.length <= MOST) return words;
  const short = letters.slice(0, MOST).join("");
  return (/^(.{40,})-[^-]*$/u.exec(short)?.[1] ?? short).replace(/-+$/, "");
}
