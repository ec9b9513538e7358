declare module '*.css';

interface ImportMeta {
	/** Files that fit a pattern, each loaded when called (vite). */
	glob(pattern: string): Readonly<Record<string, (() => Promise<unknown>) | undefined>>;
}
