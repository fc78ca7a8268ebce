import type { PathData } from "./shape.ts";

/**
 * A path of absolute commands seen in a mirror that stands upright at half of `width`: a chair's right arm from its left one. The
 * outline is mirrored and the cloth on it is not, as in life.
 */
export function mirrorPath(d: PathData, width: number): PathData {
  const flip = (x: number) => Number((width - x).toFixed(2)).toString();
  return d.replace(/([A-Z])([^A-Z]*)/g, (_, command: string, rest: string) => {
    const n =
      rest.trim() === ""
        ? []
        : rest
            .trim()
            .split(/[\s,]+/)
            .map(Number);
    if (command === "V" || command === "Z") return command + rest;
    if (command === "H") return `H${n.map(flip).join(" ")}`;
    if (command === "A") {
      // Seen in a mirror an arc turns the other way.
      const out: (string | number)[] = [];
      for (let i = 0; i + 7 <= n.length; i += 7)
        out.push(
          n[i] as number,
          n[i + 1] as number,
          n[i + 2] as number,
          n[i + 3] as number,
          n[i + 4] ? 0 : 1,
          flip(n[i + 5] as number),
          n[i + 6] as number,
        );
      return `A${out.join(" ")}`;
    }
    return command + n.map((value, at) => (at % 2 === 0 ? flip(value) : value)).join(" ");
  });
}
