import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import asc from "assemblyscript/asc";

/** Where their sources lie: AssemblyScript, whose ending keeps them apart from what TypeScript checks. */
const SOURCES = join(import.meta.dirname, "../../src/cloth/kernels/assembly");

/** The kernels, compiled to WebAssembly with its vectors of four. Throws where they do not compile. */
export async function compileKernels(): Promise<Uint8Array> {
  const options = "--optimizeLevel 3 --enable simd --runtime stub --noAssert --importMemory";
  let code: Uint8Array | null = null;
  const { error, stderr } = await asc.main(
    ["all.ts", "--outFile", "code.wasm", ...options.split(" ")],
    {
      readFile: (name, base) => read(join(base, name)),
      writeFile: (_, contents) => {
        if (typeof contents !== "string") code = contents;
      },
      listFiles: () => [],
    },
  );
  if (error || code === null) throw new Error(`${error?.message}\n${stderr.toString()}`);
  return code;
}

function read(name: string): string | null {
  const file = join(SOURCES, name.replace(/\.ts$/, ".as"));
  return existsSync(file) ? readFileSync(file, "utf8") : null;
}

/** The compiled kernels as a module of the program, which reads no files. */
export function moduleText(code: Uint8Array): string {
  const lines =
    Buffer.from(code)
      .toString("base64")
      .match(/.{1,92}/g) ?? [];
  return [
    "/** The kernels of `assembly/`, compiled by `npm run kernels`: WebAssembly in base64. */",
    "export const CODE = [",
    ...lines.map((line) => `  "${line}",`),
    '].join("");',
    "",
  ].join("\n");
}
