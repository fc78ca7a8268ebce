import { resolve } from "node:path";
import { Command, CommanderError, InvalidArgumentError } from "commander";
import { reportText } from "../diagnostics/report.ts";
import { type ExitCode, type Outcome, UsageError } from "./outcome.ts";
import { recoverOutput } from "./output/outputFolder.ts";
import { paintFor } from "./paint.ts";
import { progress } from "./progress.ts";
import type { Surroundings } from "./surroundings.ts";
import { parseTarget } from "./target.ts";
import { usageWords } from "./usageWords.ts";
import { remnantOf, scopeOf, type TypedRemnant, type TypedScope } from "./verbs/fitsOptions.ts";
import type { Beginning } from "./verbs/new.ts";
import { swatchOptions, type TypedOptions } from "./verbs/swatchOptions.ts";
import type { Wiring } from "./wiring.ts";

interface GlobalOptions {
  readonly content: string;
  readonly out: string;
  readonly json?: boolean;
}

/**
 * Runs one command line (without node and script) and gives its exit status. With `--json` standard
 * output holds one JSON document and nothing else; everything meant for people goes to standard error.
 * A verb is loaded when it is asked for: loading them all takes longer than most of them work.
 */
export async function main(
  args: readonly string[],
  wiring: Wiring,
  around: Surroundings,
): Promise<ExitCode> {
  let exit: ExitCode = 0;
  const program = commandLine(wiring, around, (code) => {
    exit = code;
  });
  try {
    await program.parseAsync([...args], { from: "user" });
    return exit;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (error instanceof UsageError) {
      around.err.write(`roomcloth: ${error.message}\n`);
      return 2;
    }
    throw error;
  }
}

function commandLine(
  wiring: Wiring,
  around: Surroundings,
  setExit: (code: ExitCode) => void,
): Command {
  const program = new Command("roomcloth")
    .description("One Markdown file a room becomes boards, a priced proposal and makers' sheets.")
    .option("--content <dir>", "folder with the studio's files", "content")
    .option("--out <dir>", "folder for the documents", "out")
    .option("--json", "one JSON document on standard output");
  quiet(program, around);
  const bar = progress(around.err);

  /** Runs a verb after an interrupted build was finished, and shows what it has to say. */
  const run = async (
    command: Command,
    verb: (contentDir: string, globals: GlobalOptions) => Promise<Outcome>,
  ): Promise<void> => {
    const globals = command.optsWithGlobals<GlobalOptions>();
    recoverOutput(resolve(globals.out));
    const outcome = await verb(resolve(globals.content), globals).finally(() => bar.clear());
    const { diagnostics } = outcome;
    if (diagnostics.length > 0) {
      around.err.write(`${reportText(diagnostics, paintFor(around.err, around.env))}\n`);
    }
    if (globals.json) around.out.write(`${JSON.stringify(outcome.json, null, 2)}\n`);
    else if (outcome.text !== "") around.out.write(`${outcome.text}\n`);
    setExit(outcome.exit);
  };
  const verb = (parent: Command, name: string, description: string): Command =>
    quiet(
      parent
        .command(name)
        .description(description)
        .allowExcessArguments(false)
        .addHelpText("after", helpAfter(name)),
      around,
    );

  verb(program, "build", "make the documents: everything, or one project or room")
    .option("--only <project[/room]>", "only this project or room")
    .option("--no-pdf", "pages only")
    .option("--no-cache", "measure and print everything again")
    .action((options: { only?: string; pdf: boolean; cache: boolean }, command: Command) =>
      run(command, async (contentDir, globals) => {
        const { env } = around;
        const { build } = await import("./verbs/build.ts");
        const only = options.only === undefined ? null : parseTarget(options.only);
        const { pdf, cache: useCache } = options;
        return build(
          { contentDir, outDir: resolve(globals.out), only, pdf, useCache, env },
          wiring,
          bar,
        );
      }),
    );
  verb(program, "check", "what is wrong and what is worth a look; writes nothing")
    .argument("[project[/room]]", "only this project, or one of its rooms")
    .action((target: string | undefined, _options: object, command: Command) =>
      run(command, async (contentDir) => {
        const only = target === undefined ? null : parseTarget(target);
        return (await import("./verbs/check.ts")).check(contentDir, wiring, only);
      }),
    );
  for (const [name, report, description] of [
    [
      "quantities",
      async () => (await import("./verbs/quantities.ts")).quantities,
      "what to buy, with the working and the cutting plan",
    ],
    ["money", async () => (await import("./verbs/money.ts")).money, "what it costs, line by line"],
  ] as const) {
    verb(program, name, description)
      .argument("<project[/room]>", "a project, or one of its rooms")
      .action((target: string, _options: object, command: Command) =>
        run(command, async (contentDir) =>
          (await report())(contentDir, parseTarget(target), wiring),
        ),
      );
  }
  verb(program, "send", "record a client's proposal as sent, to say later what has changed")
    .argument("<project>", "the project whose proposal goes out")
    .option("--no-pdf", "the record alone, without the printed proposal")
    .action((project: string, { pdf }: { pdf: boolean }, command: Command) =>
      run(command, async (contentDir) => {
        const { send } = await import("./verbs/send.ts");
        const target = parseTarget(project);
        return send({ contentDir, target, pdf, env: around.env }, wiring, bar);
      }),
    );
  verb(program, "archive", "freeze a finished project: its files, its documents and its record")
    .argument("<project>", "the project")
    .option("--to <folder>", "where archives are kept; without it beside the studio's folder")
    .option("--name <name>", "the archive's own name; without it the project's and its revision")
    .option("--no-pdf", "pages only")
    .action(
      (project: string, options: { to?: string; name?: string; pdf: boolean }, command: Command) =>
        run(command, async (contentDir, globals) => {
          const { archive } = await import("./verbs/archive.ts");
          const { to = null, name = null, pdf } = options;
          const [target, outDir] = [parseTarget(project), resolve(globals.out)];
          const { env } = around;
          return archive({ contentDir, outDir, target, to, name, pdf, env }, wiring, bar);
        }),
    );
  verb(program, "verify", "whether anything in an archive has been changed, added or lost")
    .argument("<bag>", "the archive's folder")
    .action((bag: string, _options: object, command: Command) =>
      run(command, async () => (await import("./verbs/verify.ts")).verify(bag, bar)),
    );
  verb(program, "preview", "the pages in a browser, renewed with every change")
    .argument("[project[/room]]", "only this project, opened at this room")
    .option("--port <number>", "port of the address", port, 8080)
    .action(async (target: string | undefined, options: { port: number }, command: Command) => {
      const globals = command.optsWithGlobals<GlobalOptions>();
      if (globals.json) throw new UsageError("preview has no --json.");
      const only = target === undefined ? null : parseTarget(target);
      recoverOutput(resolve(globals.out));
      const { preview } = await import("./verbs/preview.ts");
      setExit(await preview(resolve(globals.content), options.port, wiring, around, only));
    });

  photoOptions(
    verb(program, "swatch", "what one photograph of a cloth says, in numbers").argument(
      "<photo>",
      "the photograph",
    ),
  )
    .option("--draw <out.png>", "the photograph with what was measured drawn over it")
    .action((photo: string, options: TypedOptions & { draw?: string }, command: Command) =>
      run(command, async (contentDir) => {
        const [how, draw] = [swatchOptions(options), drawTo(options.draw, photo)];
        return (await import("./verbs/swatch.ts")).swatch(contentDir, photo, how, draw);
      }),
    );

  photoOptions(
    verb(program, "match", "the cloths of the library nearest to a photograph").argument(
      "<photo>",
      "the photograph",
    ),
  ).action((photo: string, options: TypedOptions, command: Command) =>
    run(command, async (contentDir) => {
      const isScaled = options.shows !== undefined || options.corners !== undefined;
      const read = swatchOptions(isScaled ? options : { ...options, shows: "1 m" });
      return (await import("./verbs/match.ts")).match(contentDir, photo, read, isScaled);
    }),
  );
  verb(program, "fits", "what a remnant of a cloth can make, with the plan that shows it")
    .argument("<cloth>", "the cloth's file name, without .md")
    .option("--length <length>", "how long the remnant is")
    .option("--width <length>", "how wide; as wide as the cloth where nothing is said")
    .option("--pieces <n>", "how many such pieces there are: 2 for a pair of curtains")
    .option(
      "--hole <place...>",
      'a hole or stain: "12in, 30in, 2in x 3in" from the left edge, up, size',
    )
    .option("--seam <length...>", "a seam along it, by its distance from the left edge")
    .option("--first-motif <length>", "from the lower end up to the middle of the first motif")
    .option("--project <project>", "what this project needs, and nothing else")
    .option("--common", "the studio's common items (common-items in studio.md), and nothing else")
    .action((cloth: string, options: TypedRemnant & TypedScope, command: Command) =>
      run(command, async (contentDir) => {
        const [remnant, scope] = [remnantOf(options), scopeOf(options)];
        return (await import("./verbs/fits.ts")).fits(contentDir, cloth, remnant, scope);
      }),
    );

  const starting = quiet(
    program.command("new").description("commented starting files with every field"),
    around,
  );
  const start = (command: Command, beginning: Beginning): Promise<void> =>
    run(command, async (contentDir) =>
      (await import("./verbs/new.ts")).begin(contentDir, beginning, wiring),
    );
  verb(starting, "studio", "a new studio")
    .argument("<dir>", "its folder")
    .action((dir: string, _options: object, command: Command) =>
      start(command, { kind: "studio", folder: resolve(dir) }),
    );
  verb(starting, "project", "a new project")
    .argument("<title>", "its name")
    .action((title: string, _options: object, command: Command) =>
      start(command, { kind: "project", title }),
    );
  verb(starting, "room", "a new room")
    .argument("<project>", "the project's folder name")
    .argument("<title>", "the room's name")
    .option("--items <kinds>", "the kinds of items that it begins with; every kind without it")
    .action((project: string, title: string, options: { items?: string }, command: Command) =>
      start(command, { kind: "room", project, title, items: options.items?.split(",") ?? null }),
    );
  verb(starting, "item", "lines of one more item, to paste into a room's file")
    .argument("<kind>", "its kind: curtains, cushion, ottoman …")
    .action((item: string, _options: object, command: Command) =>
      run(command, async (contentDir) =>
        (await import("./verbs/new.ts")).beginItem(contentDir, item, wiring),
      ),
    );
  verb(starting, "cloth", "a new cloth, measured from its photograph")
    .argument("<photo>", "the photograph")
    .option("--shows <length>", "how much cloth it shows from left to right")
    .action((photo: string, options: { shows?: string }, command: Command) =>
      start(command, { kind: "cloth", photo: resolve(photo), shows: options.shows ?? null }),
    );
  return program;
}

/** Command lines that can be typed as they stand, but for the names. */
const EXAMPLES: Readonly<Record<string, readonly string[]>> = {
  swatch: [
    "swatch leaf.jpg --shows 27in --draw leaf.png",
    "swatch leaf.jpg --corners 120,80 400,90 395,270 118,262   (a bank card lies on it)",
  ],
  match: ["match leaf.jpg"],
  fits: [
    'fits leaf-print --length "1 3/4 yd"',
    'fits leaf-print --length "1 3/4 yd" --common',
    'fits leaf-print --length 96in --pieces 2 --seam 27in --hole "12in, 30in, 2in x 3in"',
  ],
  quantities: ["quantities gannet-house", "quantities gannet-house/study --json"],
  archive: ["archive gannet-house", "archive gannet-house --to /media/disk/archive"],
  verify: ["verify content-archive/gannet-house-B"],
  room: [
    'new room gannet-house "Sitting room"',
    'new room gannet-house "Sitting room" --items curtains,cushion,ottoman',
  ],
  item: ["new item cushion"],
  cloth: ["new cloth leaf.jpg --shows 27in"],
};

function helpAfter(name: string): string {
  const examples = EXAMPLES[name] ?? [];
  return [
    ...(examples.length > 0 ? ["", "For example:", ...examples.map((line) => `  ${line}`)] : []),
    "",
    "With every verb: --content <dir>, --out <dir>, and all but preview --json.",
  ].join("\n");
}

/** What is said of a photograph: its scale, its light, what of it is cloth. */
function photoOptions(command: Command): Command {
  return command
    .option("--shows <length>", "how much cloth it shows from left to right, along its middle")
    .option("--colours <n>", "how many colours; without it as many as stand out")
    .option("--neutral <x,y,w,h@reflectance>", "a white card (@0.9) or grey card (@0.18) in it")
    .option("--corners <x,y...>", "the four corners of a bank card (ID-1) that lies on the cloth")
    .option("--crop <x,y,w,h>", "the part of it that is cloth");
}

function drawTo(draw: string | undefined, photo: string): string | null {
  if (draw === undefined) return null;
  if (!/\.png$/i.test(draw))
    throw new UsageError(`--draw writes a PNG: give it a name that ends in .png, not "${draw}".`);
  if (resolve(draw) === resolve(photo))
    throw new UsageError("--draw would write over the photograph.");
  return draw;
}

/** Errors are thrown instead of ending the process, and help goes where we are told. */
function quiet(command: Command, around: Surroundings): Command {
  return command.exitOverride().configureOutput({
    writeOut: (text) => around.out.write(text),
    writeErr: (text) => around.err.write(text),
    outputError: (text, write) => write(usageWords(text, command)),
  });
}

function port(text: string): number {
  const number = Number(text);
  if (!/^\d+$/.test(text) || number > 65_535) {
    throw new InvalidArgumentError("A port is a whole number up to 65535; 0 chooses a free one.");
  }
  return number;
}
