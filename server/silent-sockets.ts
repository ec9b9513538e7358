import type { Server } from 'node:http';
import type { Socket } from 'node:net';

/**
 * Watches a server for connections that have asked nothing yet, as browsers open ahead of need; the function returned closes them.
 * Node's server.close counts them as busy and would wait for them, for minutes where the browser stays open.
 */
export function watchSilentSockets(server: Server): () => void {
	const silent = new Set<Socket>();
	server.on('connection', (socket) => {
		silent.add(socket);
		socket.once('close', () => silent.delete(socket));
	});
	server.on('request', ({ socket }) => silent.delete(socket));
	return () => {
		for (const socket of silent) socket.destroy();
	};
}
