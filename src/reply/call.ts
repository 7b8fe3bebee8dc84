/** What is said unasked, in the dinner's language. */
import { wordCall as german } from './de/calls.ts';
import { type CallToWord, wordCall as english } from './en/calls.ts';
import type { Scene } from './scene.ts';
import type { Spoken } from './spoken.ts';

export const wordCall = (call: CallToWord, scene: Scene): Spoken =>
  scene.dinner.language === 'de' ? german(call, scene) : english(call, scene);
