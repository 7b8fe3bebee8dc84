/** A bare "done" answers the call that was made last: a step's, or the oven's own. */
import { expect, it } from 'vitest';
import { at, opened } from '../harness/day.ts';

it('goes to the pull, to the oven called for the sides, then to the side', async () => {
  const session = await opened();
  const say = async (time: string, text: string): Promise<string> =>
    (await session.hear({ text, at: at(time) })).replies.map((reply) => reply.text).join(' ');
  await say('13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare');
  await say('16:20', 'the oven is on');
  await say('16:45', 'the roast is in');
  await say('17:06', 'the oven is down');
  await say('17:50', 'the potatoes are in');
  await say('18:10', 'it reads 105');
  const calls = await session.wake(at('18:26'));
  expect(calls.map((one) => one.kind)).toContain('pull');
  expect(await say('18:26', 'done')).toMatch(/^Out it is/);
  const heat = (await session.wake(at('18:27'))).findLast((one) => one.kind === 'oven-change');
  expect(heat?.text).toMatch(/450/);
  expect(await say('18:27', 'done')).toMatch(/^Oven at 450/);
  const sides = await session.wake(at('18:36'));
  expect(sides.findLast((one) => one.kind === 'side-in')?.step).toBe('roast-potatoes.brown');
  expect(await say('18:36', 'done')).toMatch(/top rack/);
  const brown = (await session.view(at('18:36'))).steps.find(
    (one) => one.id === 'roast-potatoes.brown',
  );
  // It has begun to brown; it is not brown yet.
  expect(brown?.state).toBe('active');
});
