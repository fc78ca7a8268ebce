import { stat } from "node:fs/promises";

/** True where a file or folder can be looked at. */
export function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
