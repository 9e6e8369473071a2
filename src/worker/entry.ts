import { type Desk, handle } from './handle.ts';
import type { Message } from './protocol.ts';
import { showLife } from './worker-life.ts';

const desk: Desk = { session: null, upload: new Uint8Array() };
/** One message after the other: an edit waits for the judgement before it. Swaps are sought beside the rest, and nothing waits for them. */
let before: Promise<void> = showLife((message) => self.postMessage(message));

self.onmessage = ({ data }: MessageEvent<Message>) => {
  const answered = before.then(() =>
    handle(desk, data, (reply, transfer = []) => self.postMessage(reply, { transfer })),
  );
  if (data.name !== 'swaps') before = answered;
};
