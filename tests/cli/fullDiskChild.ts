/** Run by a test in a mount namespace with a tiny disk at the folder given: builds until it is full. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { say, smallStudio } from "./smallStudio.ts";

const [disk = ""] = process.argv.slice(2);
const studio = smallStudio("full");
studio.room("quay/den", "first");
const build = () =>
  say(
    ["--content", studio.content, "--out", join(disk, "out"), "build", "--no-pdf"],
    studio.wiring,
  );
const first = await build();
studio.room("quay/den", "second ".repeat(100_000));
const second = await build();
const page = join(disk, "out/client/quay/den/index.html");
const state = readdirSync(join(disk, "out/.roomcloth"));
const text = existsSync(page) ? readFileSync(page, "utf8") : "";
studio.remove();
process.stdout.write(
  JSON.stringify({
    first: first.exit,
    second: second.exit,
    err: second.err,
    state,
    old: text.includes("first"),
  }),
);
