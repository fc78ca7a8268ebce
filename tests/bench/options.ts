import { parseArgs } from "node:util";

/** What a run of a bench may be told, as `parseArgs` of Node reads it. */
export type Options = NonNullable<Parameters<typeof parseArgs>[0]>["options"];

/** What was told: the words, and the options by name. */
export interface Told {
  readonly words: readonly string[];
  readonly text: (option: string) => string | null;
  readonly number: (option: string, usual: number) => number;
  readonly flag: (option: string) => boolean;
}

function read(options: NonNullable<Options>) {
  try {
    return parseArgs({ args: process.argv.slice(3), options, allowPositionals: true });
  } catch (fault) {
    process.stderr.write(
      `${(fault as Error).message}\nOptions: ${Object.keys(options)
        .map((o) => `--${o}`)
        .join(" ")}\n`,
    );
    process.exit(2);
  }
}

/** Reads the command line after the bench's name. An option that the bench does not know ends the run, before it has measured for an hour. */
export function told(options: NonNullable<Options>): Told {
  const { values, positionals } = read(options);
  const of = values as Readonly<Record<string, string | boolean | undefined>>;
  return {
    words: positionals,
    text: (option) => (of[option] as string | undefined) ?? null,
    number: (option, usual) => {
      const value = of[option] === undefined ? usual : Number(of[option]);
      if (!Number.isFinite(value)) throw new Error(`--${option} wants a number`);
      return value;
    },
    flag: (option) => of[option] === true,
  };
}
