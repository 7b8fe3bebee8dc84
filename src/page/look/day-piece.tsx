/** One piece of paper on the day: a step, to be touched for its reason. */
import type { Mark } from '../pack.ts';
import { capital, clock, type Manner } from '../show.ts';
import { words } from '../words.ts';

export function Piece(props: {
  mark: Mark;
  manner: Manner;
  y: number;
  height: number;
  chosen: boolean;
  focusable: boolean;
  choose(): void;
}) {
  const { mark, manner, y, height, chosen, focusable, choose } = props;
  const { step, x, width, state, label, inside } = mark;
  const times = words.stepTimes(clock(step.start, manner), clock(step.end, manner));
  const middle = y + height / 2;
  const press = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    choose();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: there is no button element inside an SVG
    <g
      role="button"
      tabindex={focusable ? 0 : -1}
      data-step={step.id}
      aria-label={`${label ?? capital(step.title)}, ${times}, ${words.stepState[state]}`}
      class={`piece in-${mark.lane} is-${state}${inside ? ' has-inside' : ''}${chosen ? ' is-chosen' : ''}`}
      onClick={choose}
      onKeyDown={press}
    >
      <rect
        class="reach"
        x={x - 8}
        y={y - 3}
        width={Math.max(width + 16, 36)}
        height={height + 7}
      />
      <rect class="paper" x={x} y={y} width={width} height={height} />
      {label && (
        <text class="label" x={inside ? x + 5 : x + width + 5} y={middle + 5.5}>
          {label}
        </text>
      )}
      {(state === 'done' || state === 'taken') && (
        <line class="struck" x1={x - 3} x2={x + width + 3} y1={middle + 2} y2={middle - 2} />
      )}
    </g>
  );
}
