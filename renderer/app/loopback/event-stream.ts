/**
 * The `data:` payloads of a text/event-stream, as they arrive.
 *
 * Leaves out event names, ids and retry times: the desk sends none. A payload that spans several `data:` lines is joined.
 */
export async function* eventStream(body: ReadableStream<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  const reader = body.getReader();
  let rest = '';
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      rest += decoder.decode(value, { stream: true });
      const blocks = rest.split(/\r?\n\r?\n/);
      rest = blocks.pop() ?? '';
      for (const block of blocks) {
        const data = block
          .split(/\r?\n/)
          .filter((line) => line.startsWith('data:'))
          .map((line) => line.slice(5).trimStart());
        if (data.length > 0) yield data.join('\n');
      }
    }
  } finally {
    reader.releaseLock();
  }
}
