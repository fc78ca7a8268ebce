import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { compileKernels, moduleText } from "./compile.ts";

// Compiles the kernels and writes them where the program has them: `npm run kernels`.
const to = join(import.meta.dirname, "../../src/cloth/kernels/code.ts");
writeFileSync(to, moduleText(await compileKernels()));
