/**
 * Inverse of a symmetric positive definite matrix, row after row in one array, by its Cholesky factor; undefined where it
 * is not positive definite.
 */
export function invertSymmetric(matrix: Float64Array, size: number): Float64Array | undefined {
	const factor = Float64Array.from(matrix);
	const at = (row: number, column: number): number => factor[row * size + column] as number;
	for (let column = 0; column < size; column += 1) {
		let pivot = at(column, column);
		for (let k = 0; k < column; k += 1) pivot -= at(column, k) ** 2;
		if (!(pivot > 1e-12 * (matrix[column * size + column] as number))) return undefined;
		const root = Math.sqrt(pivot);
		factor[column * size + column] = root;
		for (let row = column + 1; row < size; row += 1) {
			let sum = at(row, column);
			for (let k = 0; k < column; k += 1) sum -= at(row, k) * at(column, k);
			factor[row * size + column] = sum / root;
		}
	}
	const inverse = new Float64Array(size * size);
	const solution = new Float64Array(size);
	for (let unit = 0; unit < size; unit += 1) {
		for (let row = 0; row < size; row += 1) {
			let sum = row === unit ? 1 : 0;
			for (let k = 0; k < row; k += 1) sum -= at(row, k) * (solution[k] as number);
			solution[row] = sum / at(row, row);
		}
		for (let row = size - 1; row >= 0; row -= 1) {
			let sum = solution[row] as number;
			for (let k = row + 1; k < size; k += 1) sum -= at(k, row) * (solution[k] as number);
			solution[row] = sum / at(row, row);
		}
		inverse.set(solution, unit * size);
	}
	return inverse;
}
