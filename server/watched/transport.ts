import {
  IPCMessageReader,
  IPCMessageWriter,
  SocketMessageReader,
  SocketMessageWriter,
  StreamMessageReader,
  StreamMessageWriter,
  type MessageReader,
  type MessageWriter,
} from 'vscode-languageserver/node';
import { createConnection } from 'node:net';

export interface Transport {
  readonly reader: MessageReader;
  readonly writer: MessageWriter;
}

/** The channel to the client that the command line names: `--stdio`, `--node-ipc`, `--socket=PORT` or `--pipe=NAME`. */
export function transportOf(args: readonly string[]): Transport {
  const valueOf = (name: string): string | undefined => {
    const at = args.findIndex((arg) => arg === name || arg.startsWith(`${name}=`));
    return at < 0 ? undefined : args[at]!.includes('=') ? args[at]!.slice(name.length + 1) : args[at + 1];
  };
  if (args.includes('--stdio')) {
    return { reader: new StreamMessageReader(process.stdin), writer: new StreamMessageWriter(process.stdout) };
  }
  if (args.includes('--node-ipc'))
    return { reader: new IPCMessageReader(process), writer: new IPCMessageWriter(process) };
  const [port, pipe] = [valueOf('--socket'), valueOf('--pipe')];
  const socket =
    port !== undefined ? createConnection(Number(port)) : pipe !== undefined ? createConnection(pipe) : null;
  if (socket === null) {
    throw new Error('Say how to talk to the client: --stdio, --node-ipc, --socket=PORT or --pipe=NAME.');
  }
  return { reader: new SocketMessageReader(socket), writer: new SocketMessageWriter(socket) };
}
