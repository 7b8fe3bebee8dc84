/** What the service says of itself when a house asks who is here. */
export interface InfoOptions {
  version: string;
  /** BCP 47 tags of the languages it hears and speaks. */
  languages: readonly string[];
  /** Answers are also sent in pieces, for houses that can speak them as they come. */
  streaming: boolean;
}

export function infoOf({ version, languages, streaming }: InfoOptions): Record<string, unknown> {
  const about = {
    attribution: { name: 'Roastcall', url: 'https://roastcall.invalid' },
    installed: true,
    version,
  };
  const models = languages.map((language) => ({
    name: `roastcall-${language}`,
    description: 'Talk beside the oven',
    ...about,
    languages: [language],
  }));
  // No intent program and no satellite: either would hide the handle program from a house.
  return {
    asr: [],
    tts: [],
    intent: [],
    wake: [],
    mic: [],
    snd: [],
    handle: [
      {
        name: 'Roastcall',
        description: 'Stands beside the cook of one large roast',
        ...about,
        supports_handled_streaming: streaming,
        supports_home_control: false,
        models,
      },
    ],
  };
}
