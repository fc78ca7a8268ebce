import { cloth } from "./cloth.ts";
import { cutting } from "./cutting.ts";

/** The benches by name; each prints its figures as ratios against a peer or a floor of the same run. */
const BENCHES: Readonly<Record<string, () => Promise<void>>> = { cloth, cutting };

const asked = process.argv[2] ?? "";
const bench = BENCHES[asked];
if (bench) await bench();
else {
  process.stderr.write(
    `Say which: npm run bench -- NAME, where NAME is ${Object.keys(BENCHES).join(" or ")}.\n`,
  );
  process.exitCode = 2;
}
