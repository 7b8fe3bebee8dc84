/** What the `state` topic tells of the open dinner: figures for screens and automations, flat. */

import type { Household } from '../../household/household.ts';
import type { FactOf } from '../../kitchen/facts.ts';
import type { View } from '../../kitchen/view.ts';

/** Absent figures are null, so that a screen shows them as unknown. */
export interface BusState {
  dinner: string | null;
  stage: string | null;
  /** The last words heard, and what was answered. */
  heard: string | null;
  reply: string | null;
  asking: string | null;
  nextStep: string | null;
  nextAt: string | null;
  checkAt: string | null;
  coreFahrenheit: number | null;
  coreCelsius: number | null;
  pullFahrenheit: number | null;
  pullCelsius: number | null;
  pullAt: string | null;
  ovenFahrenheit: number | null;
  ovenCelsius: number | null;
  servingWanted: string | null;
  readyAt: string | null;
  minutesToTable: number | null;
}

const nothing: BusState = {
  dinner: null,
  stage: null,
  heard: null,
  reply: null,
  asking: null,
  nextStep: null,
  nextAt: null,
  checkAt: null,
  coreFahrenheit: null,
  coreCelsius: null,
  pullFahrenheit: null,
  pullCelsius: null,
  pullAt: null,
  ovenFahrenheit: null,
  ovenCelsius: null,
  servingWanted: null,
  readyAt: null,
  minutesToTable: null,
};

/** From the oven to the knife the forecast is of this roast; before, of one that is still cold. */
const hasCore = new Set<View['stage']>(['sear', 'low-roast', 'rest', 'hold', 'carve']);

export async function busState(household: Household): Promise<BusState> {
  const kept = await household.current();
  if (!kept) return nothing;
  const view = await household.view(kept);
  const facts = await household.facts(kept);
  const heard = facts.findLast((one): one is FactOf<'words-heard'> => one.type === 'words-heard');
  const reply = facts.findLast((one): one is FactOf<'replied'> => one.type === 'replied');
  const core = hasCore.has(view.stage) ? view.forecast?.coreNowFahrenheit.p50 : undefined;
  const oven = view.oven.setFahrenheit;
  const likely = view.serving.likely;
  const over = view.stage === 'served' || view.stage === 'put-away';
  return {
    dinner: view.id,
    stage: view.stage,
    heard: heard?.text ?? null,
    reply: reply?.text ?? null,
    asking: view.asking?.text || null,
    nextStep: view.next?.title ?? null,
    nextAt: view.next?.at ?? null,
    checkAt: view.checkAt ?? null,
    coreFahrenheit: core ?? null,
    coreCelsius: celsius(core),
    pullFahrenheit: view.target.pullFahrenheit ?? null,
    pullCelsius: celsius(view.target.pullFahrenheit),
    pullAt: over ? null : (view.forecast?.pull.p50 ?? null),
    ovenFahrenheit: oven,
    ovenCelsius: oven === 0 ? 0 : celsius(oven),
    servingWanted: view.serving.wanted ?? null,
    readyAt: over ? null : (likely ?? null),
    minutesToTable:
      over || likely === undefined
        ? null
        : Math.round((Date.parse(likely) - Date.parse(view.at)) / 60_000),
  };
}

const celsius = (fahrenheit: number | undefined): number | null =>
  fahrenheit === undefined ? null : Math.round(((fahrenheit - 32) / 1.8) * 10) / 10;
