/** The part of Eleventy 3.1 that we use; the package ships no types. */
declare module "@11ty/eleventy" {
  export interface UserConfig {
    addPlugin<T>(plugin: (config: UserConfig, options: T) => void, options: T): void;
    addGlobalData(key: string, value: unknown): void;
    addTemplate(path: string, content: string, data?: Record<string, unknown>): void;
    addWatchTarget(path: string): void;
    on(event: string, listener: (facts: { directories: { output: string } }) => unknown): void;
    setDataFileSuffixes(suffixes: readonly string[]): void;
    setFrontMatterParsingOptions(options: object): void;
    setLibrary(extension: string, library: unknown): void;
    setTemplateFormats(formats: readonly string[]): void;
    setUseGitIgnore(use: boolean): void;
    setUseTemplateCache(use: boolean): void;
    setWatchJavaScriptDependencies(watch: boolean): void;
  }
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        configPath: string | null;
        quietMode: boolean;
        loader: "esm";
        config: (config: UserConfig) => void;
      },
    );
    disableLogger(): void;
    init(): Promise<void>;
    write(): Promise<unknown>;
  }
}
