/** The day drawn: time from left to right, a lane each, the string of now, readings as tickets. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Instant } from '../../base/time.ts';
import { type Picture, pictureOf, type Spot } from '../day.ts';
import type { Mark } from '../pack.ts';
import { capital, clock, type Manner } from '../show.ts';
import type { Step, View } from '../wire.ts';
import { words } from '../words.ts';
import { Piece, Touch } from './day-piece.tsx';
import { Ground, Overlay } from './day-string.tsx';
import { useSize } from './use-size.ts';

/** Narrower than this the day scrolls sideways under the thumb. */
const narrowest = 620;
const shortest = 250;

interface DayProps {
  view: View;
  at: Instant;
  manner: Manner;
  selected: string | undefined;
  select(step: string): void;
}

export function DayPicture(props: DayProps) {
  const { view, at, manner } = props;
  const { ref, width, height } = useSize<HTMLDivElement>();
  const [unfolded, setUnfolded] = useState(false);
  const scrolled = useRef(false);
  const size = { width: Math.max(narrowest, width), height: Math.max(shortest, height) };
  const picture = width > 0 ? pictureOf(view, { at, ...size, manner, unfolded }) : undefined;
  useEffect(() => {
    if (!picture || scrolled.current || picture.width <= width) return;
    scrolled.current = true;
    ref.current?.scrollTo({ left: picture.nowX - width / 4 });
  });
  return (
    <div class="day" ref={ref} {...(picture && picture.width > width ? { tabIndex: 0 } : {})}>
      {picture && (
        <div class="layers">
          <Ground picture={picture} />
          <Pieces {...props} picture={picture} />
          <Overlay picture={picture} from={clock(picture.from, manner)} />
          {(picture.fold || unfolded) && (
            <button
              type="button"
              class={unfolded ? 'unfold is-open' : 'unfold'}
              aria-expanded={unfolded}
              onClick={() => setUnfolded(!unfolded)}
            >
              {unfolded ? words.fold : words.folded}
            </button>
          )}
        </div>
      )}
      {picture && <Told picture={picture} unit={manner.temperature} />}
    </div>
  );
}

const inTime = <S extends { step: Step }>(marks: readonly S[]): S[] =>
  [...marks].sort((a, b) => a.step.start.localeCompare(b.step.start));

const arrows: Record<string, number> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** One stop for the tab key; the arrows go from piece to piece in the order of time. */
function Pieces(props: DayProps & { picture: Picture }) {
  const { picture, manner, selected, select } = props;
  const order = inTime<Mark | Spot>([...picture.marks, ...picture.spots]);
  const [wanted, setWanted] = useState<string>();
  const open = order.find((mark) => mark.state === 'planned') ?? order[0];
  const focus = order.find((mark) => mark.step.id === wanted) ?? open;
  const move = (event: KeyboardEvent): void => {
    const by = arrows[event.key];
    if (by === undefined || !focus) return;
    event.preventDefault();
    const here = order.indexOf(focus);
    const next = order[Math.min(order.length - 1, Math.max(0, here + by))];
    if (!next) return;
    setWanted(next.step.id);
    const svg = event.currentTarget as Element;
    svg.querySelector<SVGElement>(`[data-step="${CSS.escape(next.step.id)}"]`)?.focus();
  };
  const choose = (step: string) => (): void => {
    setWanted(step);
    select(step);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of SVG buttons is no fieldset
    <svg
      class="pieces"
      role="group"
      aria-label={words.dayOf(clock(picture.from, manner), clock(picture.to, manner))}
      width={picture.width}
      height={picture.height}
      onKeyDown={move}
    >
      <title>{words.day}</title>
      {picture.marks.map((mark) => (
        <Piece
          key={mark.step.id}
          {...{ mark, manner }}
          y={picture.places[mark.lane].y + mark.row * picture.rowHeight}
          height={picture.rowHeight - 5}
          chosen={mark.step.id === selected}
          focusable={mark === focus}
          choose={choose(mark.step.id)}
        />
      ))}
      {picture.spots.map((spot) => (
        <Touch
          key={spot.step.id}
          {...{ manner, ...spot }}
          look="spot"
          name={capital(spot.step.title)}
          chosen={spot.step.id === selected}
          focusable={spot === focus}
          choose={choose(spot.step.id)}
        >
          <rect class="paper" x={spot.x} y={spot.y} width={spot.width} height={spot.height} />
        </Touch>
      ))}
    </svg>
  );
}

/** The same for those who cannot see it. */
function Told({ picture, unit }: { picture: Picture; unit: 'F' | 'C' }) {
  return (
    <ul class="unseen">
      {picture.tickets.map((ticket) => (
        <li key={`${ticket.time} ${ticket.value}`}>
          {words.readingOf(ticket.time, `${ticket.value} °${unit}`)}
        </li>
      ))}
      {picture.pull && <li>{words.pullBetween(picture.pull.early, picture.pull.late)}</li>}
    </ul>
  );
}
