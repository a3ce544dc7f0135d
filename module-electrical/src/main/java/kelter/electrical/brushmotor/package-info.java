/** Motors with brushes: the motor, its brushes and its tacho generator. */
package kelter.electrical.brushmotor;
