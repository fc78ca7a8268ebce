/** The text of `bagit.txt`: two lines, which say what the folder is (RFC 8493, 2.1.1). */
export const DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

export interface Declared {
  /** True of editions before 1.0, whose manifests may share the files out among them. */
  readonly isOld: boolean;
  /** What is wrong with it, said without its subject; null where nothing is. */
  readonly fault: string | null;
}

/** Reads `bagit.txt`: exactly two lines, one space behind each colon, no byte order mark, an edition and an encoding that can be read. */
export function readDeclaration(text: string | null): Declared {
  const [, major, minor, encoding] =
    /^BagIt-Version: (\d+)\.(\d+)(?:\r\n|\n|\r)Tag-File-Character-Encoding: (\S+)(?:\r\n|\n|\r)?$/.exec(
      text ?? "",
    ) ?? [];
  const isOld = major === "0";
  const edition = `${major}.${minor}`;
  if (major === undefined)
    return { isOld, fault: "is not the two lines that tell a bag from another folder" };
  if (edition !== "1.0" && !/^0\.9[3-7]$/.test(edition))
    return { isOld, fault: `is of edition ${edition} of the standard, which is not known here` };
  if (encoding?.toUpperCase() !== "UTF-8")
    return { isOld, fault: `says that the lists are written in ${encoding}, not in UTF-8` };
  return { isOld, fault: null };
}
