/** Speech and kitchen noise as 16 kHz mono samples: espeak-ng says it, sox makes the noise, the mix is ours. */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const rate = 16_000;
const headBytes = 44;

export interface Voice {
  name: string;
  wordsPerMinute: number;
}

/** Mostly American, as the acoustic model is; an English one is hardly understood by it. */
export const voices: readonly Voice[] = [
  { name: 'en-us', wordsPerMinute: 150 },
  { name: 'en-us+f2', wordsPerMinute: 150 },
  { name: 'en-us', wordsPerMinute: 135 },
  { name: 'en-us+f2', wordsPerMinute: 165 },
  { name: 'en-us', wordsPerMinute: 165 },
  { name: 'en-gb', wordsPerMinute: 145 },
];

export function say(text: string, voice: Voice, folder: string): Int16Array {
  const raw = join(folder, 'raw.wav');
  const file = join(folder, 'speech.wav');
  execFileSync('espeak-ng', [
    '-v',
    voice.name,
    '-s',
    String(voice.wordsPerMinute),
    '-w',
    raw,
    text,
  ]);
  execFileSync('sox', [raw, '-r', String(rate), '-c', '1', '-b', '16', file, 'pad', '0.25', '0.4']);
  return samplesOf(file);
}

/** A minute of extractor hood, sizzling and people talking in the next room. */
export function kitchenNoise(talk: readonly string[], folder: string): Int16Array {
  const at = (name: string) => join(folder, `${name}.wav`);
  const synth = (name: string, ...effects: string[]) =>
    execFileSync('sox', [
      '-R',
      '-n',
      '-r',
      String(rate),
      '-c',
      '1',
      '-b',
      '16',
      at(name),
      ...effects,
    ]);
  synth('hood', 'synth', '60', 'brownnoise', 'lowpass', '1200', 'gain', '-n', '-6');
  synth(
    'sizzle',
    ...'synth 60 whitenoise gain -6 highpass 3000 tremolo 0.6 60 gain -n -18'.split(' '),
  );
  const talkers = talk.map((text, index) => {
    const file = at(`talk${index}`);
    const voice = index % 2 === 0 ? 'en-us+m7' : 'en-gb+f4';
    execFileSync('espeak-ng', ['-v', voice, '-s', '175', '-w', file, text]);
    return file;
  });
  const effects = ['rate', String(rate), 'repeat', '20', 'trim', '0', '60', 'gain', '-n', '-16'];
  execFileSync('sox', [...talkers, '-b', '16', '-c', '1', at('talk'), ...effects]);
  execFileSync('sox', [
    '-m',
    at('hood'),
    at('sizzle'),
    at('talk'),
    at('kitchen'),
    'gain',
    '-n',
    '-3',
  ]);
  return samplesOf(at('kitchen'));
}

/** Speech with the noise `decibels` below it (root mean square against root mean square). */
export function mixed(speech: Int16Array, noise: Int16Array, from: number, decibels: number) {
  const under = Int16Array.from(speech, (_, at) => noise[(from + at) % noise.length]!);
  const gain = loudness(speech) / loudness(under) / 10 ** (decibels / 20);
  return Int16Array.from(speech, (sample, at) =>
    Math.max(-32768, Math.min(32767, Math.round(0.6 * (sample + gain * under[at]!)))),
  );
}

const loudness = (samples: Int16Array): number =>
  Math.sqrt(samples.reduce((sum, one) => sum + one * one, 0) / samples.length);

function samplesOf(file: string): Int16Array {
  const bytes = readFileSync(file);
  return new Int16Array(
    bytes.buffer.slice(bytes.byteOffset + headBytes, bytes.byteOffset + bytes.length),
  );
}

/** Headerless samples, as the recogniser's batch reads them. */
export const writeRaw = (file: string, samples: Int16Array): void =>
  writeFileSync(file, Buffer.from(samples.buffer));
