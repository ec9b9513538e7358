import type { FrameworkList } from '../../item-bank/types.ts';

const lastFramework = 'zp-framework';

/** The framework looked at last in this browser, else the first; undefined where there is none. */
export function recallFramework(
	frameworks: FrameworkList,
): { readonly id: string; readonly edition: string } | undefined {
	const [id, edition] = (localStorage.getItem(lastFramework) ?? '').split(' ');
	const found = frameworks.find((each) => each.framework === id && each.edition === edition) ?? frameworks[0];
	return found && { id: found.framework, edition: found.edition };
}

/** Remembers in this browser which framework was looked at. */
export function keepFramework({ id, edition }: { readonly id: string; readonly edition: string }): void {
	localStorage.setItem(lastFramework, `${id} ${edition}`);
}
