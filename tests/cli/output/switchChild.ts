/**
 * Run as a process of its own by the tests: publishes new trees into an output folder and, at the step
 * whose number or name is given, ends itself as a power cut would. It writes how many steps there were.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { openOutput } from "../../../src/cli/output/outputFolder.ts";

const [outDir = "", fatal = "0"] = process.argv.slice(2);
let count = 0;
const output = openOutput(outDir, (step) => {
  count += 1;
  if (fatal === String(count) || fatal === step) process.kill(process.pid, "SIGKILL");
});
if (output.value === null) throw new Error(output.diagnostics[0]?.message);
const files = [
  { path: "client/quay/den/index.html", project: "quay" },
  { path: "client/quay/index.html", project: "quay" },
  { path: "makers/new-maker/quay/den.html", project: "quay" },
  { path: "studio/quay/findings.html", project: "quay" },
  { path: "client/mill/index.html", project: "mill" },
  { path: "studio/index.html", project: null },
];
for (const { path } of files) {
  const target = join(output.value.staging, path);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, "new");
}
const result = output.value.publish(files, {
  built: new Set([null, "quay", "mill"]),
  existing: new Set(["quay", "mill"]),
});
output.value.close();
if (result.value === null) throw new Error(result.diagnostics[0]?.message);
process.stdout.write(String(count));
