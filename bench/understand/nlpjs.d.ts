/** The little of @nlpjs/basic that the baseline calls; the package has no types of its own. */
declare module '@nlpjs/basic' {
  interface Nlp {
    settings: { log: boolean; autoSave: boolean; threshold: number };
    addLanguage(language: string): void;
    addDocument(language: string, text: string, intent: string): void;
    train(): Promise<void>;
    process(language: string, text: string): Promise<{ intent: string; score: number }>;
  }
  export function dockStart(options: {
    use: string[];
    settings?: Record<string, unknown>;
    autoTrain?: boolean;
  }): Promise<{ get(name: 'nlp'): Nlp }>;
}
