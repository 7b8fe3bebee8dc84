/** A choice to make: two or three large tickets, each with what it costs. */
import { capital, clock, degrees, type Manner } from '../show.ts';
import type { Option } from '../wire.ts';
import { words } from '../words.ts';

export function Options(props: {
  options: readonly Option[];
  manner: Manner;
  choose(n: number): void;
}) {
  const { options, manner, choose } = props;
  return (
    <section class="hanging options" aria-label={words.choices}>
      {options.map((option) => (
        <button type="button" class="ticket option" key={option.n} onClick={() => choose(option.n)}>
          <b class="number">{option.n}</b>
          <span class="what">{capital(option.title)}</span>
          <span class="cost">
            {words.option(clock(option.serving, manner), degrees(option.coreAtServing.p50, manner))}
          </span>
          <span class="risk">{capital(option.risk)}</span>
        </button>
      ))}
    </section>
  );
}
