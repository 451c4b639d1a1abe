package slackwater.field;

/**
 * What the water does at one moment, one value a cell in the order of the grid. The arrays are used again for the next
 * moment: whoever wants to keep them copies them.
 *
 * @param timeS water time since averaging began
 * @param u velocity along x through the face of each cell towards smaller x, metres per second (v along y, w along z);
 *     0 where glass, rock or sand is on one side. What flows into a cell and out of it balances
 * @param wallShear shear stress of the walls where water touches glass, rock or sand, pascals; 0 elsewhere
 * @param eddyViscosityM2PerS what the eddies below the size of a cell do, as a viscosity, 0 or more
 * @param outflowPerS share of the cell's water that leaves through the overflow each second; 0 elsewhere
 */
public record Snapshot(double timeS, float[] u, float[] v, float[] w, float[] wallShear, float[] eddyViscosityM2PerS,
                       float[] outflowPerS) {
}
